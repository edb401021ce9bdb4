#pragma once

namespace sheerpole {

/// Reads the command line and runs the verb. Returns the exit code.
int run_command_line(int argument_count, char** arguments);

} // namespace sheerpole
