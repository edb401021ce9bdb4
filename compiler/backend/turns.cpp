#include "backend/turns.hpp"

#include "units/format_length.hpp"

namespace sheerpole {

std::string format_turns(Length travel, const std::optional<Length>& travel_per_turn) {
  if (!travel_per_turn || *travel_per_turn == Length{})
    return {};
  return format_fixed(travel / *travel_per_turn, 1);
}

} // namespace sheerpole
