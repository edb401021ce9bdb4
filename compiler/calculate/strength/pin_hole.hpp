#pragma once

#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// Distance from the centre of a hole to the edge of the plate, counted in hole diameters. Source:
/// arithmetic; 1.5 as a rule, 1.25 at the very least and 2 with reserve are common practice, no source.
/// Nothing unless both are more than zero.
std::optional<double> edge_distance_ratio(Length centre_to_edge, Length hole_diameter);

/// What is left of the plate on the pull's side of the hole over the hole: ratio - 1/2. Less than zero: the
/// hole runs out of the plate. Source: arithmetic. Nothing as above.
std::optional<double> ligament_ratio(Length centre_to_edge, Length hole_diameter);

/// How much a pin has in its hole.
struct HoleClearance {
  Length clearance;    ///< hole - pin; less than zero: it does not enter
  double of_pin = 0.0; ///< clearance over the pin's diameter
};

/// Source: arithmetic. 0.2 to 0.4 mm for pins up to 12 mm and 0.5 to 0.8 mm above are common practice, no
/// source. Nothing unless both diameters are more than zero.
std::optional<HoleClearance> hole_clearance(Length hole_diameter, Length pin_diameter);

} // namespace sheerpole
