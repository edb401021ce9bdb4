#pragma once

#include "calculate/derived.hpp"

#include <optional>

namespace sheerpole {

/// Change of length for one turn: two pitches for a right- and a left-handed thread that work together, one
/// for a single thread. Source: geometry of the screw; pitches from ASME B1.1 and ISO 261.
Length travel_per_turn(const Screw& screw);

/// Turns for this much travel; the sign is kept.
double turns(Length travel, Length per_turn);

/// Where the adjuster at stack[item] stands in its range. Thread engaged in each stud is what is left at
/// the longest setting, plus half the way back from there for a pair and all of it for a single thread. The
/// least engagement is one diameter of the thread (common practice, no source; some say three turns).
/// Nothing when the item is no adjuster, or its setting or range is not stated.
std::optional<TakeUp> take_up(const Rig& rig, const Stay& stay, std::size_t item);

} // namespace sheerpole
