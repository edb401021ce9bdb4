#pragma once

#include "units/dimension.hpp"

namespace sheerpole {

/// A value whose dimension is known only when the file is read. `si` is in the coherent SI unit (degrees
/// become radians, 50 % becomes 0.5, degC becomes kelvin, 72 d stays 72 rope diameters). Always finite.
struct Quantity {
  double si = 0.0;
  Dimension dimension;
};

} // namespace sheerpole
