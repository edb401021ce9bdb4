#include "driver/fleet/in_order.hpp"

#include "driver/terminal.hpp"

#include <string>

namespace sheerpole {

void ProgressLine::show(std::size_t done) {
  print_progress("\r" + std::to_string(done) + " of " + std::to_string(count_));
  shown_ = true;
}

void ProgressLine::clear() {
  if (shown_)
    print_progress("\r\033[K"); // to the end of the line
  shown_ = false;
}

} // namespace sheerpole
