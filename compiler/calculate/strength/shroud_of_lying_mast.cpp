#include "calculate/strength/shroud_of_lying_mast.hpp"

#include "calculate/physics/finite_value.hpp"

#include <cmath>
#include <numbers>

namespace sheerpole {

std::optional<Force> shroud_of_lying_mast(Force mast_weight, double share_at_head, double angle_radians) {
  if (mast_weight < Force() || !(share_at_head >= 0.0) || !(share_at_head <= 1.0) ||
      !(angle_radians > 0.0) || !(angle_radians <= std::numbers::pi / 2.0))
    return std::nullopt;
  return finite_force(share_at_head * mast_weight.newtons() / std::sin(angle_radians));
}

} // namespace sheerpole
