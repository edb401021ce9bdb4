#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <vector>

namespace sheerpole {

/// A kind of part that may be added to a stack.
struct SparePart {
  Length length;   ///< over 0
  int in_hand = 0; ///< how many
};

/// One way to fill a gap.
struct Filling {
  std::vector<int> counts; ///< of each spare part
  Length adjuster;         ///< how long the adjuster is then set
};

/// The ways to fill `gap` with spare parts and one adjuster set from `shortest` to `longest`: fewest parts
/// first, among these the setting nearest the middle of the band, then the earlier parts. At most `most`
/// ways. Empty when there is none; `short_by` then says by how much the nearest misses the band: more than
/// nothing when the gap is too long for all that is in hand, less when it is too short for the adjuster
/// alone, or the distance to the nearest band in between. Source: enumeration; at most 12 parts are added.
struct Fillings {
  std::vector<Filling> ways;
  Length short_by;
};
Fillings fill_gap(Length gap, Length shortest, Length longest, const std::vector<SparePart>& spares,
                  std::size_t most);

/// Answers the `fit` records of a stay.
std::vector<Fit> fit_stack(const Rig& rig, StayId stay, const LengthSum& pin_to_pin);

} // namespace sheerpole
