#include "calculate/strength/thread_strength.hpp"

#include "calculate/physics/finite_value.hpp"

#include <numbers>

namespace sheerpole {

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
