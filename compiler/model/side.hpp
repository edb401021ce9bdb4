#pragma once

#include <cstdint>
#include <string_view>

namespace sheerpole {

/// Which side of the boat, looking forward.
enum class Side { centre, port, starboard };

constexpr std::string_view name_of(Side side) {
  switch (side) {
  case Side::port:
    return "port";
  case Side::starboard:
    return "starboard";
  case Side::centre:
    return "centre";
  }
  return "centre";
}

/// Which end of a line or a part: that towards the masthead, or that towards the deck.
enum class WhichEnd : std::uint8_t { upper, lower };

} // namespace sheerpole
