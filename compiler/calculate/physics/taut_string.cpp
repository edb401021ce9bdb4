#include "calculate/physics/taut_string.hpp"

#include "calculate/physics/finite_value.hpp"

#include <cmath>

namespace sheerpole {

std::optional<Force> tension_from_frequency(double linear_mass_kilograms_per_metre, Length free_length,
                                            double frequency_hertz) {
  if (!(linear_mass_kilograms_per_metre > 0.0) || free_length <= Length() || !(frequency_hertz > 0.0))
    return std::nullopt;
  const double speed = 2.0 * free_length.metres() * frequency_hertz;
  return finite_force(linear_mass_kilograms_per_metre * speed * speed);
}

std::optional<double> first_mode_frequency(double linear_mass_kilograms_per_metre, Length free_length,
                                           Force tension) {
  if (!(linear_mass_kilograms_per_metre > 0.0) || free_length <= Length() || tension <= Force())
    return std::nullopt;
  return finite_value(std::sqrt(tension.newtons() / linear_mass_kilograms_per_metre) /
                      (2.0 * free_length.metres()));
}

std::optional<Force> tension_from_pulse(double linear_mass_kilograms_per_metre, Length free_length,
                                        double return_time_seconds) {
  if (!(return_time_seconds > 0.0))
    return std::nullopt;
  // A wave comes back once in every swing of the first mode.
  return tension_from_frequency(linear_mass_kilograms_per_metre, free_length, 1.0 / return_time_seconds);
}

} // namespace sheerpole
