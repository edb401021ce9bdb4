#include "calculate/physics/lashing_share.hpp"

#include "calculate/physics/finite_value.hpp"

#include <cmath>

namespace sheerpole {

std::optional<double> lashing_share(double friction, int turns, double wrap_radians) {
  if (!(friction >= 0.0) || !(wrap_radians >= 0.0) || !std::isfinite(friction) ||
      !std::isfinite(wrap_radians) || turns < 1 || turns > 1000)
    return std::nullopt;
  const double loss = friction * wrap_radians;
  if (loss == 0.0)
    return 1.0;
  // Sum of a geometric series, (1 - r^n) / (1 - r), without taking nearly equal numbers from each other.
  const double legs = 2.0 * turns;
  return finite_value(std::expm1(-loss * legs) / std::expm1(-loss) / legs);
}

} // namespace sheerpole
