#pragma once

#include "calculate/strength/bridle.hpp"
#include "model/rig.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// A point where the stack of a stay ends in a part of the kind `junction` and other stays go on.
struct JunctionBalance {
  PointId at;
  StayId single;                ///< the one on its side; when it is not balanced: the first stay there
  std::vector<StayId> legs;     ///< the others
  bool legs_are_a_pair = false; ///< port and starboard of one stay
  /// Why there is no offset: "2 stays meet there, 3 are looked at".
  std::string not_checked;
  /// From the line to the middle between the legs' ends for a pair; else from the plane of the three ends.
  Length off;
  std::optional<double>
      leg_share; ///< the greater tension of the legs over the stay's; nothing: a leg would push
};

/// Each junction in the order of the stays. The end of a stay is its next place from the junction. Source:
/// junction_offset(), bridle_tensions().
std::vector<JunctionBalance> junction_balances(const Rig& rig);

} // namespace sheerpole
