#include "calculate/strength/stay_directions.hpp"

#include "calculate/physics/physical_values.hpp"

#include <algorithm>
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

namespace {

constexpr double straight_radians = 1e-9;

bool is_half_turn_or_less(double radians) {
  return radians >= 0.0 && radians <= std::numbers::pi;
}

bool is_less_than_quarter_turn(double radians) {
  return std::abs(radians) < std::numbers::pi / 2.0;
}

} // namespace

std::optional<Force> bend_thrust(Force tension, double bend_radians) {
  if (tension < Force() || !is_half_turn_or_less(bend_radians))
    return std::nullopt;
  return finite_force(2.0 * tension.newtons() * std::sin(bend_radians / 2.0));
}

std::optional<double> bisecting_elevation(double lean_above_radians, double lean_below_radians) {
  if (!is_less_than_quarter_turn(lean_above_radians) || !is_less_than_quarter_turn(lean_below_radians) ||
      !(lean_above_radians > lean_below_radians))
    return std::nullopt;
  return (lean_above_radians + lean_below_radians) / 2.0;
}

std::optional<Force> tip_side_force(Force tension, double bend_radians, double off_bisector_radians) {
  const auto thrust = bend_thrust(tension, bend_radians);
  if (!thrust || !is_half_turn_or_less(off_bisector_radians))
    return std::nullopt;
  return std::sin(off_bisector_radians) * *thrust;
}

std::optional<TipBend> tip_bend(const SpacePoint& above, const SpacePoint& tip, const SpacePoint& below,
                                const SpacePoint& root) {
  const auto upwards = direction_between(tip, above);
  const auto downwards = direction_between(tip, below);
  const auto inwards = direction_between(tip, root);
  if (!upwards || !downwards || !inwards)
    return std::nullopt;
  TipBend result;
  result.bend_radians = angle_between(*upwards, -1.0 * *downwards);
  if (std::numbers::pi - result.bend_radians < straight_radians)
    return std::nullopt;
  if (result.bend_radians < straight_radians)
    return result;
  const SpaceVector resultant = *upwards + *downwards;
  result.resultant_share = magnitude(resultant);
  result.thrust_share = dot_product(resultant, *inwards);
  const double from_inwards = angle_between(resultant, *inwards);
  result.off_spreader_radians = std::min(from_inwards, std::numbers::pi - from_inwards);
  // Within the rounding of a right angle there is no telling which way.
  if (std::abs(result.thrust_share) > straight_radians * result.resultant_share)
    result.push = result.thrust_share > 0.0 ? TipPush::inwards : TipPush::outwards;
  return result;
}

} // namespace sheerpole
