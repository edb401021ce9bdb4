#pragma once

#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// Angle in radians between the two legs of an eye on a bare pin: 2 asin((D/2) / L), D the pin's diameter
/// and L from its centre to the throat. The rope has no thickness here; with it the angle is larger
/// (calculate/physics/eye_loop.hpp). Source: plane geometry. Nothing unless the diameter is more than zero
/// and the throat beyond the pin.
std::optional<double> eye_angle(Length pin_diameter, Length centre_to_throat);

/// The same of an eye measured flat, `inside_length` from the throat to the far side of the pin, which is
/// half a pin beyond its centre: 2 asin(0.5 / (k - 0.5)) of an eye k pins long. Source and range as above.
std::optional<double> eye_angle_of_inside_length(Length pin_diameter, Length inside_length);

} // namespace sheerpole
