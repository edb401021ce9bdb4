#include "calculate/strength/pin_bending.hpp"

#include "calculate/physics/finite_value.hpp"

#include <numbers>

namespace sheerpole {

namespace {

/// Moment over force, in metres.
std::optional<double> arm(const PinStack& stack) {
  if (stack.cheek <= Length() || stack.middle <= Length() || stack.gap < Length())
    return std::nullopt;
  return finite_value((stack.middle.metres() + 4.0 * stack.gap.metres() + 2.0 * stack.cheek.metres()) /
                      8.0);
}

double section_modulus(Length diameter) {
  const double d = diameter.metres();
  return std::numbers::pi * d * d * d / 32.0;
}

} // namespace

std::optional<double> pin_bending_moment(Force force, const PinStack& stack) {
  const auto metres = arm(stack);
  if (!metres || force < Force())
    return std::nullopt;
  return finite_value(force.newtons() * *metres);
}

std::optional<double> pin_bending_stress(Force force, const PinStack& stack, Length diameter) {
  const auto moment = pin_bending_moment(force, stack);
  if (!moment || diameter <= Length())
    return std::nullopt;
  return finite_value(*moment / section_modulus(diameter));
}

std::optional<Force> pin_bending_strength(const PinStack& stack, Length diameter, double stress_pascals,
                                          double factor) {
  const auto metres = arm(stack);
  if (!metres || diameter <= Length() || !(stress_pascals > 0.0) || !(factor > 0.0))
    return std::nullopt;
  return finite_force(factor * stress_pascals * section_modulus(diameter) / *metres);
}

} // namespace sheerpole
