#pragma once

namespace sheerpole {

/// What the command returns to the shell.
enum ExitCode : int {
  exit_clean = 0,  ///< no finding of severity error
  exit_errors = 1, ///< at least one
  exit_usage = 2,  ///< the command line, or a folder that can not be written to
  exit_fault = 3   ///< a fault of the compiler or of a back end
};

} // namespace sheerpole
