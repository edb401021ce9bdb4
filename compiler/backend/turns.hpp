#pragma once

#include "calculate/derived.hpp"

#include <optional>
#include <string>

namespace sheerpole {

/// Turns of the adjuster's screw for this travel, rounded to 0.1: "11.8". Empty for an adjuster without a
/// screw.
std::string format_turns(Length travel, const std::optional<Length>& travel_per_turn);

} // namespace sheerpole
