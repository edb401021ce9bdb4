#include "calculate/strength/bridle.hpp"

#include "calculate/physics/physical_values.hpp"

#include <cmath>
#include <numbers>

namespace sheerpole {

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
