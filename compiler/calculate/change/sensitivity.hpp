#pragma once

#include "calculate/derived.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace sheerpole {

/// A small change of one thing.
enum class SmallChange : std::uint8_t {
  forward, ///< 10 mm, as all that are lengths
  to_starboard,
  up,
  further_aft, ///< 1 degree
  further_up,  ///< 1 degree, of a spar that lies
  longer,
  set_longer
};

/// What a small change of one thing does to one stay.
struct Sensitivity {
  StayId stay;
  std::string what; ///< "cap-tang.port", "mast", "turnbuckle-58"
  SmallChange by = SmallChange::up;
  Length pin_to_pin; ///< how much longer the way gets
  Length body;       ///< and its bodies together
  /// Where the length is not that of the path a moved point is not in it: the reading holds for the boat as
  /// she stands.
  bool counts = true;
};

/// For each stay: each point of its path 10 mm forward, to starboard and up; each spar that carries points
/// of its path a degree further aft or up and 10 mm higher; each part of its stack 10 mm longer. The
/// differences are those of the whole sums and no derivatives. What moves a stay by less than 0.005 mm is
/// left out. Source: Euclidean distances; a part that is longer leaves so much less for the line.
std::vector<Sensitivity> sensitivities(const Rig& rig, const Derived& derived);

} // namespace sheerpole
