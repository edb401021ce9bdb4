#include "calculate/strength/pin_strength.hpp"

#include "calculate/physics/finite_value.hpp"

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

} // namespace sheerpole
