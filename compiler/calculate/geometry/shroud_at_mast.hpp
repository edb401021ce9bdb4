#pragma once

#include "model/rig.hpp"

#include <optional>
#include <string>

namespace sheerpole {

/// The angle at which a shroud comes off the mast.
struct ShroudAtMast {
  double radians = 0.0;
  std::string against; ///< "mast", "mast, the nearest spar", "upright, no mast is stated"
};

/// Of a stay on port or starboard that begins at the mast and runs down and outwards to somewhere else than
/// this mast; its first part counts. Nothing for any other stay: on the centreline, from a spreader's tip
/// or a junction, on a bowsprit, running or temporary. Source: stay_angle().
std::optional<ShroudAtMast> shroud_at_mast(const Rig& rig, const Stay& stay);

} // namespace sheerpole
