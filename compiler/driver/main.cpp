#include "base/internal_error.hpp"
#include "driver/command_line.hpp"

#include <exception>

int main(int argument_count, char** arguments) {
  try {
    return sheerpole::run_command_line(argument_count, arguments);
  } catch (const std::exception& error) {
    sheerpole::internal_error(error.what());
  }
}
