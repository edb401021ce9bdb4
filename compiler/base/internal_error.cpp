#include "base/internal_error.hpp"

#include <cstdio>
#include <cstdlib>

namespace sheerpole {

void internal_error(std::string_view what, std::source_location place) {
  std::string_view file = place.file_name();
  // Only the room and the file: a path of the machine that compiled this has no place in a message.
  const auto room = file.rfind("compiler/");
  if (room != std::string_view::npos)
    file.remove_prefix(room);
  std::fprintf(stderr, "sheerpole: fault of the compiler itself: %.*s (%.*s:%u, %s)\n",
               static_cast<int>(what.size()), what.data(), static_cast<int>(file.size()), file.data(),
               static_cast<unsigned>(place.line()), place.function_name());
  // Not exit(): other threads may be at work with what it would take apart.
  std::fflush(stdout);
  std::_Exit(3);
}

} // namespace sheerpole
