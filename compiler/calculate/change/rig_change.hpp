#pragma once

#include "calculate/change/line_fate.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// One stated thing that differs. Empty `was`: it was not stated; empty `is`: it is not stated any more.
struct ChangedInput {
  Remark subject;  ///< "cap-tang.port"; the stay itself for what is stated there
  Remark property; ///< "place", "stack"
  std::string was;
  std::string is;
};

/// How far the adjusters of a stay can go, all together, from where they are set.
struct AdjusterRange {
  Length to_tighten;
  Length to_slacken;
};

/// One stay that is not what it was.
struct StayChange {
  enum class Kind { changed, added, removed };
  Kind kind = Kind::changed;
  std::string stay;
  std::string title;
  std::vector<ChangedInput> why; ///< what is stated otherwise, of all on which the stay rests
  ChangedLength pin_to_pin;
  ChangedLength body; ///< of all its pieces together
  std::vector<PieceChange> pieces;
  std::optional<AdjusterRange> range_was;
  std::optional<AdjusterRange> range_is;
};

/// How many of a part the stacks hold, or how much of a line has to be ordered.
struct PartCount {
  std::string part;
  std::string title;
  int was = 0;
  int is = 0;
};
struct LineToOrder {
  std::string line;
  std::string title;
  int pieces = 0;
  Length cut;           ///< of the pieces together, as far as it is known
  bool complete = true; ///< every one of them is known
};

/// A stay that was measured before a place of its path was moved: what was measured no longer holds.
struct OutdatedMeasurement {
  std::string stay;
  std::string measured;               ///< the date of the reading; empty: without one, or a stated length
  bool stated = false;                ///< a stated length and no reading
  Length expected;                    ///< how much longer the path is now
  std::vector<ChangedInput> why = {}; ///< what is stated otherwise of all on which the stay rests
};

/// What differs between two rigs, or between a rig as it is and as it might be.
struct RigChange {
  std::vector<StayChange> stays;             ///< in the order of the new rig, then those that are gone
  std::vector<OutdatedMeasurement> outdated; ///< in the order of the new rig; to be measured again
  std::vector<ChangedInput> without_move;    ///< stated otherwise, but moves no length
  std::vector<PartCount> parts;   ///< of which there are more or fewer, in the order of their names
  std::vector<LineToOrder> lines; ///< for pieces that are new or replaced

  bool empty() const { return stays.empty() && outdated.empty() && without_move.empty(); }
};

/// Compares two rigs stay by stay, by name. A stay that is made and set as it was is not in it. Where a
/// place of a path moved under a stay that was measured before, its length is that of the boat as she was:
/// it is among those to be measured again. Source:
/// sums of the two; that a spliced rope can be opened and made shorter and that a wire needs a new terminal
/// is common practice, no source. `was_draft` tells of which old pieces nothing hangs that this file speaks
/// of; empty: all were made as it says.
RigChange compare_rigs(const Rig& was, const Derived& was_derived, const Rig& is, const Derived& is_derived,
                       const IsDraft& was_draft = {});

} // namespace sheerpole
