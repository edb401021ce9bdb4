#include "calculate/strength/rope_strength.hpp"

#include "calculate/physics/physical_values.hpp"
#include "calculate/physics/rope_work.hpp"

#include <cmath>

namespace sheerpole {

std::optional<Force> reduced_break_load(Force break_load, std::span<const double> factors) {
  if (break_load <= Force())
    return std::nullopt;
  double left = break_load.newtons();
  for (const double factor : factors) {
    if (!(factor > 0.0) || !(factor <= 1.0))
      return std::nullopt;
    left *= factor;
  }
  return finite_force(left);
}

std::optional<WeakestLink> weakest_link(std::span<const std::optional<Force>> break_loads) {
  if (break_loads.empty())
    return std::nullopt;
  WeakestLink result;
  for (std::size_t i = 0; i < break_loads.size(); ++i) {
    const std::optional<Force>& load = break_loads[i];
    if (!load) {
      result.unknown.push_back(i);
      continue;
    }
    if (*load < Force())
      return std::nullopt;
    if (!result.at_most || *load < *result.at_most) {
      result.at_most = load;
      result.weakest_known = i;
    }
  }
  if (result.unknown.empty())
    result.strength = result.at_most;
  return result;
}

std::optional<double> eye_angle(Length pin_diameter, Length centre_to_throat) {
  if (pin_diameter <= Length() || centre_to_throat <= pin_diameter / 2.0)
    return std::nullopt;
  return 2.0 * std::asin(pin_diameter / centre_to_throat / 2.0);
}

std::optional<double> eye_angle_of_inside_length(Length pin_diameter, Length inside_length) {
  return eye_angle(pin_diameter, inside_length - pin_diameter / 2.0);
}

namespace {

bool is_left(double factor) {
  return factor > 0.0 && factor <= 1.0;
}

} // namespace

std::optional<LashingStrength> lashing_strength(const LashingMake& make, double friction,
                                                double wrap_radians) {
  const auto share = lashing_share(friction, make.turns, wrap_radians);
  if (!share || make.cord_break_load <= Force() || !is_left(make.bend_factor) || !is_left(make.knot_factor))
    return std::nullopt;
  const double legs = 2.0 * make.turns;
  // The knot sees r^(2N-1) of the first leg's tension. Behind much friction this is nearly nothing.
  const double at_knot = std::exp(-friction * wrap_radians * (legs - 1.0));
  const bool knot_first = make.knot_factor < make.bend_factor * at_knot;
  const double first_leg = knot_first ? make.knot_factor / at_knot : make.bend_factor;
  const auto strength = finite_force(make.cord_break_load.newtons() * first_leg * legs * *share);
  if (!strength)
    return std::nullopt;
  return LashingStrength{*strength, *share, knot_first};
}

std::optional<Force> lashing_strength_by_legs(Force cord_break_load, int legs, double factor) {
  if (cord_break_load <= Force() || legs < 1 || legs > 2000 || !is_left(factor))
    return std::nullopt;
  return finite_force(legs * factor * cord_break_load.newtons());
}

std::optional<double> tackle_advantage(int parts, HaulingPart hauling_part, double sheave_efficiency) {
  if (parts < 1 || parts > 100 || !(sheave_efficiency > 0.0) || !(sheave_efficiency <= 1.0))
    return std::nullopt;
  double tension = hauling_part == HaulingPart::from_fixed_block ? sheave_efficiency : 1.0;
  double sum = 0.0;
  for (int part = 0; part < parts; ++part) {
    sum += tension;
    tension *= sheave_efficiency;
  }
  return sum;
}

} // namespace sheerpole
