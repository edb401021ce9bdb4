#include "calculate/strength/stay_angle.hpp"

#include "calculate/physics/finite_value.hpp"

#include <cmath>
#include <numbers>

namespace sheerpole {

std::optional<double> stay_angle(const SpacePoint& stay_top, const SpacePoint& stay_foot,
                                 const SpacePoint& mast_top, const SpacePoint& mast_foot) {
  const auto stay = direction_between(stay_top, stay_foot);
  const auto mast = direction_between(mast_top, mast_foot);
  if (!stay || !mast)
    return std::nullopt;
  return angle_between(*stay, *mast);
}

std::optional<double> tension_over_side_force(double angle_radians) {
  if (!(angle_radians > 0.0) || !(angle_radians < std::numbers::pi))
    return std::nullopt;
  return finite_value(1.0 / std::sin(angle_radians));
}

std::optional<double> compression_over_side_force(double angle_radians) {
  if (!(angle_radians > 0.0) || !(angle_radians <= std::numbers::pi / 2.0))
    return std::nullopt;
  return finite_value(std::cos(angle_radians) / std::sin(angle_radians));
}

std::optional<Force> tension_holding_side_force(Force side_force, double angle_radians) {
  const auto factor = tension_over_side_force(angle_radians);
  if (!factor || side_force < Force())
    return std::nullopt;
  return finite_force(*factor * side_force.newtons());
}

std::optional<Force> balancing_tension(Force tension, double angle_radians, double other_angle_radians) {
  const auto factor = tension_over_side_force(other_angle_radians);
  if (!factor || tension < Force() || !tension_over_side_force(angle_radians))
    return std::nullopt;
  return finite_force(*factor * std::sin(angle_radians) * tension.newtons());
}

std::optional<Force> chainplate_side_force(Force tension, double out_of_plane_radians) {
  if (tension < Force() || !(out_of_plane_radians >= 0.0) ||
      !(out_of_plane_radians <= std::numbers::pi / 2.0))
    return std::nullopt;
  return std::sin(out_of_plane_radians) * tension;
}

} // namespace sheerpole
