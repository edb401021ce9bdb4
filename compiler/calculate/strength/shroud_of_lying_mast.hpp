#pragma once

#include "units/force.hpp"

#include <optional>

namespace sheerpole {

/// Tension of the one shroud that holds a mast level when the boat lies on her side: share x W /
/// sin(angle), the angle being between shroud and mast, in radians. With `share_at_head` 1/2 an even mast
/// hangs half its weight on the heel and half on the shroud, W / (2 sin(angle)). Source: statics; the rule
/// with a half is common practice, no source. Nothing when the weight is less than zero, the share not
/// between 0 and 1, or the angle not between 0 and a quarter turn, 0 excluded.
std::optional<Force> shroud_of_lying_mast(Force mast_weight, double share_at_head, double angle_radians);

} // namespace sheerpole
