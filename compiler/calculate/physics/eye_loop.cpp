#include "calculate/physics/eye_loop.hpp"

#include "calculate/physics/finite_value.hpp"

#include <cmath>
#include <numbers>

namespace sheerpole {

std::optional<EyeLoop> eye_loop(Length bearing_diameter, Length rope_diameter, Length centre_to_throat) {
  const double radius = (bearing_diameter.metres() + rope_diameter.metres()) / 2.0;
  const double h = centre_to_throat.metres();
  if (bearing_diameter < Length() || rope_diameter < Length() || !(radius > 0.0) || !(h > radius))
    return std::nullopt;
  const double tangent = std::sqrt((h - radius) * (h + radius));
  const double alpha = std::asin(radius / h);
  const auto length = finite_length(tangent);
  const auto loop = finite_length(2.0 * tangent + radius * (std::numbers::pi + 2.0 * alpha));
  const auto share = finite_value(h / (2.0 * tangent)); // cos alpha = t / h
  if (!length || !loop || !share)
    return std::nullopt;
  return EyeLoop{*length, alpha, *loop, *share};
}

} // namespace sheerpole
