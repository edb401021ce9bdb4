#pragma once

#include "calculate/cut/line_ends.hpp"
#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <optional>
#include <vector>

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

/// The least rope that an eye can use beyond the bearing, whatever its throat. A throat farther off makes
/// the way to it longer by as much as it lies farther off, and each leg by the cosine of its angle to the
/// pull, so the least is where both legs stand at 60 deg to the pull: q as above, b + g = 30 deg. Round a
/// seat thinner than the rope they never stand so wide, and the least is where they meet at the seat
/// itself. Source: plane geometry. Nothing for a negative length.
std::optional<Length> least_eye_allowance(Length seat_radius, Length rope_diameter);

/// The diameter of the seat of the part at this end: as stated; else that of a circle of the girth that a
/// soft eye goes over. Nothing when there is neither.
std::optional<Sourced<Length>> seat_diameter(const LineEnd& end);

/// Rope that an eye uses beyond the bearing, and what the other ways to it would have given.
struct EyeAllowance {
  std::optional<Term> term;  ///< empty when there is no way to it
  std::vector<Remark> notes; ///< the other ways and their difference; empty when there is one way only
};

/// A test wrap measured round the part wins over the allowance that the splice states, that over the
/// geometry of the rope-seat (its diameter, and throat: the distance from the seat's centre to the throat).
/// Source: a measured wrap contains the real seat, rope and throat; common practice, no source.
EyeAllowance eye_allowance(const LineMaterial& material, const Splice& splice, const LineEnd& end);

} // namespace sheerpole
