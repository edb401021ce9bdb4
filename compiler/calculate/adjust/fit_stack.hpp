#pragma once

#include "calculate/adjust/removable_parts.hpp"
#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <utility>
#include <vector>

namespace sheerpole {

/// One way to make a line in hand fit.
struct FitWay {
  PartCounts parts;   ///< and how many are added
  PartCounts out;     ///< removable parts that are taken out
  Length adjuster;    ///< as it is then set
  double open = 0.0;  ///< the same as a share of its range
  ChangedStack stack; ///< what the parts do where they meet
};

/// The answer to one `fit`.
struct Fit {
  Length line; ///< body of the line in hand
  Length gap;  ///< pin-to-pin less the line and the fixed hardware
  PartId adjuster;
  Length shortest; ///< of the wanted band
  Length longest;
  std::vector<FitWay> ways; ///< those whose joints can be made first, then fewest parts
  Length short_by;          ///< without a way: how far the nearest is off the band
  Remark not_checked;
  Span place;
};

/// A kind of part that may be added to a stack, or taken out of it.
struct SparePart {
  Length length;   ///< over 0 to be added, below 0 to be taken out
  int in_hand = 0; ///< how many
  int kind = -1;   ///< the same number: never one added and one taken out; -1: like no other
};

/// One way to fill a gap.
struct Filling {
  std::vector<int> counts; ///< of each spare part
  Length adjuster;         ///< how long the adjuster is then set
};

/// The ways to fill `gap` with spare parts, added or taken out, and one adjuster set from `shortest` to
/// `longest`: fewest parts first, among these the setting nearest the middle of the band, then the earlier
/// parts. At most `most` ways. Empty when there is none; `short_by` then says by how much the nearest
/// misses the band: more than nothing when the gap is too long for all that is in hand, less when it is too
/// short for the adjuster alone, or the distance to the nearest band in between. Source: enumeration; at
/// most 12 parts are added.
struct Fillings {
  std::vector<Filling> ways;
  Length short_by;
};
Fillings fill_gap(Length gap, Length shortest, Length longest, const std::vector<SparePart>& spares,
                  std::size_t most);

/// Answers the `fit` records of a stay. Parts to be added are the `parts` that are loose and the stay's own
/// `spare-parts`; what the stack marks removable may be taken out. The parts of the first way are spent, so
/// that no other stay is offered them; several fits of one stay are questions about the same parts.
std::vector<Fit> fit_stack(const Rig& rig, StayId stay, const LengthSum& pin_to_pin, LooseParts& loose);

} // namespace sheerpole
