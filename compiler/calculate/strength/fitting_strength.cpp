#include "calculate/strength/fitting_strength.hpp"

#include "calculate/physics/physical_values.hpp"

#include <numbers>

namespace sheerpole {

std::optional<Force> pin_shear_strength(Length diameter, double shear_stress_pascals, int planes) {
  if (diameter <= Length() || !(shear_stress_pascals > 0.0) || planes < 1)
    return std::nullopt;
  const double area = std::numbers::pi / 4.0 * diameter.metres() * diameter.metres();
  return finite_force(planes * area * shear_stress_pascals);
}

std::optional<Force> bearing_strength(Length pin_diameter, Length plate_thickness, double stress_pascals,
                                      double factor) {
  if (pin_diameter <= Length() || plate_thickness <= Length() || !(stress_pascals > 0.0) || !(factor > 0.0))
    return std::nullopt;
  return finite_force(factor * pin_diameter.metres() * plate_thickness.metres() * stress_pascals);
}

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

std::optional<double> edge_distance_ratio(Length centre_to_edge, Length hole_diameter) {
  if (centre_to_edge <= Length() || hole_diameter <= Length())
    return std::nullopt;
  return finite_value(centre_to_edge / hole_diameter);
}

std::optional<double> ligament_ratio(Length centre_to_edge, Length hole_diameter) {
  const auto ratio = edge_distance_ratio(centre_to_edge, hole_diameter);
  return ratio ? std::optional(*ratio - 0.5) : std::nullopt;
}

std::optional<HoleClearance> hole_clearance(Length hole_diameter, Length pin_diameter) {
  if (hole_diameter <= Length() || pin_diameter <= Length())
    return std::nullopt;
  const Length clearance = hole_diameter - pin_diameter;
  const auto of_pin = finite_value(clearance / pin_diameter);
  if (!of_pin)
    return std::nullopt;
  return HoleClearance{clearance, *of_pin};
}

std::optional<double> thread_stress_area(Length diameter, Length pitch, double pitches) {
  const double stress_diameter = diameter.metres() - pitches * pitch.metres();
  if (diameter <= Length() || pitch <= Length() || !(pitches >= 0.0) || !(stress_diameter > 0.0))
    return std::nullopt;
  return finite_value(std::numbers::pi / 4.0 * stress_diameter * stress_diameter);
}

std::optional<Force> thread_strength(double stress_area_square_metres, double stress_pascals) {
  if (!(stress_area_square_metres > 0.0) || !(stress_pascals > 0.0))
    return std::nullopt;
  return finite_force(stress_area_square_metres * stress_pascals);
}

} // namespace sheerpole
