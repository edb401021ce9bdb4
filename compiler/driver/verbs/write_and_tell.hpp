#pragma once

#include "backend/backend.hpp"
#include "driver/exit_code.hpp"

#include <string>

namespace sheerpole {

/// Writes the files into the folder and tells each, or why none was written. Exit code: clean; usage when
/// the folder can not be written to; fault when a back end named its files badly.
int write_and_tell(const OutputBundle& bundle, const std::string& folder);

} // namespace sheerpole
