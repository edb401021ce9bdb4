#include "base/internal_error.hpp"
#include "driver/command_line.hpp"
#include "driver/terminal.hpp"
#include "driver/writing/folder_handle.hpp"

#include <cstdlib>
#include <exception>
#include <new>
#include <string_view>
#include <unistd.h>

namespace {

/// Words that are there already: whatever makes some would need memory again.
[[noreturn]] void end_without_memory() {
  constexpr std::string_view words = "sheerpole: there is not enough memory; not all was done\n";
  sheerpole::write_whole(STDERR_FILENO, words);
  std::_Exit(sheerpole::exit_usage);
}

/// An exception in a place that takes none. Memory is what runs out there; anything else is a fault.
[[noreturn]] void end_at_once() {
  try {
    if (const auto thrown = std::current_exception())
      std::rethrow_exception(thrown);
  } catch (const std::bad_alloc&) {
    end_without_memory();
  } catch (const std::exception& error) {
    sheerpole::internal_error(error.what());
  }
  sheerpole::internal_error("an end without a reason");
}

/// Before all else: tables that are made when the program starts need memory too.
[[gnu::constructor(101)]] void say_what_ends_us() {
  std::set_terminate(end_at_once);
}

} // namespace

int main(int argument_count, char** arguments) {
  try {
    sheerpole::hold_standard_streams();
    return sheerpole::finish_printing(sheerpole::run_command_line(argument_count, arguments));
  } catch (const std::bad_alloc&) {
    end_without_memory();
  } catch (const std::exception& error) {
    sheerpole::internal_error(error.what());
  }
}
