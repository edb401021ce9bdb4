#pragma once

#include "driver/depends_file.hpp"
#include "driver/exit_code.hpp"

#include <string>

namespace sheerpole {

/// Writes which files were made from which. Exit code: usage when the file can not be written or a name has
/// a sign in it that the form can not say, which has been told.
int write_depends(const Dependencies& dependencies, const std::string& file);

} // namespace sheerpole
