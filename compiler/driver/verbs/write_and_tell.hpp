#pragma once

#include "backend/backend.hpp"
#include "driver/exit_code.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Writes the files into the folder and tells each, or why none was written. Exit code: clean; usage when
/// the folder can not be written to; fault when a back end named its files badly. `paths` receives the
/// paths of the files.
int write_and_tell(const OutputBundle& bundle, const std::string& folder,
                   std::vector<std::string>* paths = nullptr);

} // namespace sheerpole
