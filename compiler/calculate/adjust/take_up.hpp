#pragma once

#include "model/rig.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerpole {

/// How far one adjuster can go from where it is set.
struct TakeUp {
  StayId stay;
  std::size_t item = 0; ///< in the stack
  PartId part;
  Sourced<Length> set;
  Length to_tighten; ///< set - shortest; negative when set beyond the range
  Length to_slacken; ///< longest - set; negative when set beyond the range
  std::optional<Length> travel_per_turn;
  std::optional<Length> engaged; ///< thread in the body, each stud, as set
  std::optional<Length>
      least_engagement; ///< diameters of thread by the rig's limits; nothing when that is switched off
};

/// By which limit the thread of a part is to be engaged, by the metal that it states: one diameter, 1.25 of
/// stainless, bronze and titanium, two of aluminium (common practice, no source).
Limit engagement_limit(const Part& part);

/// Change of length for one turn: two pitches for a right- and a left-handed thread that work together, one
/// for a single thread. Source: geometry of the screw; pitches from ASME B1.1 and ISO 261.
Length travel_per_turn(const Screw& screw);

/// Turns for this much travel; the sign is kept.
double turns(Length travel, Length per_turn);

/// Where the adjuster at stack[item] stands in its range. Thread engaged in each stud is what is left at
/// the longest setting, plus half the way back from there for a pair and all of it for a single thread. The
/// least engagement goes by the metal of the part.
/// Nothing when the item is no adjuster, or its setting or range is not stated.
std::optional<TakeUp> take_up(const Rig& rig, const Stay& stay, std::size_t item);

/// One stay in one state of the rig.
struct DerivedPosition {
  std::size_t state = 0;    ///< in Rig::states
  std::size_t position = 0; ///< in its positions
  StayId stay;
  std::vector<TakeUp> adjusters; ///< as set in this state
  Length change;                 ///< how much longer the stay's hardware is than in its usual state
};

/// How a stay stands in a state: its adjusters as they are set there and what that makes of its length. The
/// bodies stay what they are, so the whole change is that of the adjusters.
DerivedPosition state_position(const Rig& rig, std::size_t state, std::size_t position);

} // namespace sheerpole
