#pragma once

#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// Length of the centreline of a rope that leaves its throat, goes round a seat and comes back to the
/// throat.
///
/// The seat has the radius r, the rope the diameter d, and the throat lies s from the seat's centre; the
/// two legs meet there side by side, at (s, d/2) and (s, -d/2). The centreline runs round the seat at R = r
/// + d/2 and leaves it along the tangents. With q = sqrt(s^2 + d^2/4), b = atan2(d/2, s), g = acos(R/q), t
/// = sqrt(q^2 - R^2): perimeter = 2 (R (pi - b - g) + t). Source: plane geometry of a taut line round a
/// circle.
///
/// Nothing when the throat lies inside the rope on the seat (q < R), or a length is negative.
std::optional<Length> eye_perimeter(Length seat_radius, Length rope_diameter, Length seat_centre_to_throat);

/// Rope that an eye uses beyond the bearing: the perimeter less the way from the seat's crown, where the
/// body ends, to the throat, h = r + s.
std::optional<Length> eye_allowance_from_geometry(Length seat_radius, Length rope_diameter,
                                                  Length seat_centre_to_throat);

} // namespace sheerpole
