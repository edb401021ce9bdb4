#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

// Stresses in pascals. Nothing unless every input is more than zero.

/// What a pin carries in `planes` planes of shear: planes (pi/4) d^2 tau. A pin between two cheeks has 2.
/// Source: mean stress on the sheared areas. At break tau is about 0.6 of the tensile strength (common
/// practice, no source), which is for the caller to say.
std::optional<Force> pin_shear_strength(Length diameter, double shear_stress_pascals, int planes = 2);

/// What a plate carries at the edge of its hole: factor d t f, d the pin's diameter, t the thickness and f
/// the plate's stress. Source: mean stress on the projected area; factor 1 with the tensile strength, or
/// 1.5 with the yield stress from memory of EN 1993-1-8, table 3.10, which was not read.
std::optional<Force> bearing_strength(Length pin_diameter, Length plate_thickness, double stress_pascals,
                                      double factor);

} // namespace sheerpole
