#pragma once

#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// An eye whose two legs come off a round bearing and cross at the throat.
struct EyeLoop {
  Length tangent;                  ///< t: from the bearing to the throat along one leg
  double half_angle_radians = 0.0; ///< alpha: between a leg and the line of pull
  Length loop;                     ///< L_loop: centreline from the throat round the bearing and back
  double leg_share = 0.0;          ///< tension of one leg over the pull on the eye
};

/// The centreline of a rope round a bare pin or a thimble, with the throat taken as one point on the line
/// of pull, h from the centre of the bearing. With R = (D + d) / 2: t = sqrt(h^2 - R^2), alpha = asin(R /
/// h), L_loop = 2 t + R (pi + 2 alpha), leg share = 1 / (2 cos alpha). Source: plane geometry of a taut
/// line round a circle, and equilibrium at the throat. Friction on the bearing, which makes the legs
/// unequal, is not in it.
///
/// It is the eye of calculate/eye_perimeter.hpp but for the throat: there the legs end side by side, half a
/// rope off the line of pull, (d/2) / sin(alpha) short of where they would cross.
///
/// Nothing when a diameter is less than zero, both are zero, or the throat lies within the rope on the
/// bearing (h <= R).
std::optional<EyeLoop> eye_loop(Length bearing_diameter, Length rope_diameter, Length centre_to_throat);

} // namespace sheerpole
