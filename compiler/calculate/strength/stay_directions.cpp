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

namespace {

/// Below this sine two directions are one; far above rounding, far below any bridle.
constexpr double one_line = 1e-9;

SpacePoint moved(const SpacePoint& from, SpaceVector way) {
  return {from.x + Length::metres(way.x), from.y + Length::metres(way.y), from.z + Length::metres(way.z)};
}

SpacePoint middle(const SpacePoint& a, const SpacePoint& b) {
  return {(a.x + b.x) / 2.0, (a.y + b.y) / 2.0, (a.z + b.z) / 2.0};
}

/// Square to the plane of three places, of length 1.
std::optional<SpaceVector> plane_normal(const SpacePoint& a, const SpacePoint& b, const SpacePoint& c) {
  const auto to_b = direction_between(a, b);
  const auto to_c = direction_between(a, c);
  if (!to_b || !to_c)
    return std::nullopt;
  const SpaceVector normal = cross_product(*to_b, *to_c);
  const double sine = magnitude(normal);
  if (!(sine > one_line))
    return std::nullopt;
  return (1.0 / sine) * normal;
}

} // namespace

std::optional<Force> bridle_leg(Force tension, double half_angle_radians) {
  if (tension < Force() || !(half_angle_radians >= 0.0) || !(half_angle_radians < std::numbers::pi / 2.0))
    return std::nullopt;
  return finite_force(tension.newtons() / (2.0 * std::cos(half_angle_radians)));
}

std::optional<BridleTensions> bridle_tensions(const BridlePlaces& places, Force tension) {
  const auto stay = direction_between(places.junction, places.stay_end);
  const auto first = direction_between(places.junction, places.first_end);
  const auto second = direction_between(places.junction, places.second_end);
  if (!stay || !first || !second || tension <= Force())
    return std::nullopt;
  // a first + b second = -stay, as near as it goes: square to both legs nothing can be done.
  const SpaceVector normal = cross_product(*first, *second);
  const double sine_squared = dot_product(normal, normal);
  if (!(sine_squared > one_line * one_line))
    return std::nullopt;
  const SpaceVector pull = -1.0 * *stay;
  const double a = dot_product(cross_product(pull, *second), normal) / sine_squared;
  const double b = dot_product(cross_product(*first, pull), normal) / sine_squared;
  if (!(a >= 0.0) || !(b >= 0.0))
    return std::nullopt;
  const auto first_force = finite_force(a * tension.newtons());
  const auto second_force = finite_force(b * tension.newtons());
  if (!first_force || !second_force)
    return std::nullopt;
  return BridleTensions{*first_force, *second_force, magnitude(a * *first + b * *second - pull)};
}

std::optional<SpacePoint> bridle_junction(const SpacePoint& stay_end, const SpacePoint& first_end,
                                          const SpacePoint& second_end, Length first_leg,
                                          Length second_leg) {
  const auto along = direction_between(first_end, second_end);
  if (!along || !plane_normal(first_end, second_end, stay_end) || first_leg <= Length() ||
      second_leg <= Length())
    return std::nullopt;
  const double base = magnitude(vector_between(first_end, second_end));
  const double first = first_leg.metres();
  const double second = second_leg.metres();
  const double foot = (base + (first - second) * ((first + second) / base)) / 2.0;
  const double height_squared = (first - foot) * (first + foot);
  if (!(height_squared >= 0.0) || !std::isfinite(height_squared))
    return std::nullopt;
  const SpaceVector to_stay = vector_between(first_end, stay_end);
  const SpaceVector square_to_base = to_stay - dot_product(to_stay, *along) * *along;
  const double scale = std::sqrt(height_squared) / magnitude(square_to_base);
  return moved(first_end, foot * *along + scale * square_to_base);
}

std::optional<JunctionOffset> junction_offset(const BridlePlaces& places) {
  const auto normal = plane_normal(places.stay_end, places.first_end, places.second_end);
  const auto line = direction_between(places.stay_end, middle(places.first_end, places.second_end));
  if (!normal || !line)
    return std::nullopt;
  const SpaceVector to_junction = vector_between(places.stay_end, places.junction);
  const auto from_plane = finite_length(std::abs(dot_product(to_junction, *normal)));
  const auto from_middle = finite_length(magnitude(cross_product(to_junction, *line)));
  if (!from_plane || !from_middle)
    return std::nullopt;
  return JunctionOffset{*from_plane, *from_middle};
}

} // namespace sheerpole
