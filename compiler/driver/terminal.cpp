#include "driver/terminal.hpp"

#include <cstdio>
#include <cstdlib>
#include <unistd.h>

namespace sheerpole {

namespace {

void print(std::FILE* stream, std::string_view text) {
  std::fwrite(text.data(), 1, text.size(), stream);
}

bool colour(int descriptor) {
  const char* no_colour = std::getenv("NO_COLOR");
  return isatty(descriptor) != 0 && (no_colour == nullptr || *no_colour == '\0');
}

} // namespace

void print_out(std::string_view text) {
  print(stdout, text);
}

void print_error(std::string_view text) {
  std::fflush(stdout); // the two streams may be one terminal; keep the order
  print(stderr, text);
}

void print_progress(std::string_view text) {
  if (isatty(STDERR_FILENO) != 0)
    print_error(text);
}

bool out_has_colour() {
  return colour(STDOUT_FILENO);
}

bool error_has_colour() {
  return colour(STDERR_FILENO);
}

} // namespace sheerpole
