#include "calculate/eye_perimeter.hpp"

#include <cmath>
#include <numbers>

namespace sheerpole {

std::optional<Length> eye_perimeter(Length seat_radius, Length rope_diameter,
                                    Length seat_centre_to_throat) {
  const double r = seat_radius.metres();
  const double half = rope_diameter.metres() / 2.0;
  const double s = seat_centre_to_throat.metres();
  const double centreline_radius = r + half;
  const double to_leg = std::hypot(s, half);
  if (r < 0.0 || half < 0.0 || s <= 0.0 || to_leg < centreline_radius)
    return std::nullopt;
  const double b = std::atan2(half, s);
  const double g = std::acos(centreline_radius / to_leg);
  const double tangent = std::sqrt(to_leg * to_leg - centreline_radius * centreline_radius);
  return Length::metres(2.0 * (centreline_radius * (std::numbers::pi - b - g) + tangent));
}

std::optional<Length> eye_allowance_from_geometry(Length seat_radius, Length rope_diameter,
                                                  Length seat_centre_to_throat) {
  const auto perimeter = eye_perimeter(seat_radius, rope_diameter, seat_centre_to_throat);
  if (!perimeter)
    return std::nullopt;
  return *perimeter - (seat_radius + seat_centre_to_throat);
}

} // namespace sheerpole
