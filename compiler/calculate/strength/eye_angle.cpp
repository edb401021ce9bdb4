#include "calculate/strength/eye_angle.hpp"

#include <cmath>

namespace sheerpole {

std::optional<double> eye_angle(Length pin_diameter, Length centre_to_throat) {
  if (pin_diameter <= Length() || centre_to_throat <= pin_diameter / 2.0)
    return std::nullopt;
  return 2.0 * std::asin(pin_diameter / centre_to_throat / 2.0);
}

std::optional<double> eye_angle_of_inside_length(Length pin_diameter, Length inside_length) {
  return eye_angle(pin_diameter, inside_length - pin_diameter / 2.0);
}

} // namespace sheerpole
