#include "calculate/strength/lashing_strength.hpp"

#include "calculate/physics/finite_value.hpp"
#include "calculate/physics/lashing_share.hpp"

#include <cmath>

namespace sheerpole {

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

} // namespace sheerpole
