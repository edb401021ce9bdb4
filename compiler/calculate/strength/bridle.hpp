#pragma once

#include "calculate/strength/stay_directions.hpp"
#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// Where a stay goes over into two legs. Weight is left out of all that follows.
struct BridlePlaces {
  SpacePoint stay_end;  ///< the far end of the single stay
  SpacePoint junction;  ///< the plate or ring
  SpacePoint first_end; ///< the ends of the legs
  SpacePoint second_end;
};

/// Tension of each of two legs at the same angle to the stay's line: T / (2 cos(half angle)). Source:
/// equilibrium of the junction, exact. Nothing when the tension is less than zero or the half angle not
/// between 0 and a quarter turn, the latter excluded.
std::optional<Force> bridle_leg(Force tension, double half_angle_radians);

/// What the legs carry.
struct BridleTensions {
  Force first, second;
  double residual_share = 0.0; ///< the force that is left over at the junction, over the stay's tension
};

/// Tensions of two legs of any lengths, in space: those that leave the least force over at the junction,
/// none of it in the plane of the legs. What is left pulls the junction to where it belongs. Source:
/// equilibrium of the junction; least squares, exact where the three lie in one plane. Nothing when the
/// tension is not more than zero, two places are one, the legs run in one line, or a leg would have to
/// push.
std::optional<BridleTensions> bridle_tensions(const BridlePlaces& places, Force tension);

/// Where a junction hangs whose legs have these lengths: in the plane of the three ends, on the side of the
/// stay's. Source: plane geometry of a triangle with three known sides. Nothing when the legs do not reach
/// each other, or the three ends lie in one line.
std::optional<SpacePoint> bridle_junction(const SpacePoint& stay_end, const SpacePoint& first_end,
                                          const SpacePoint& second_end, Length first_leg,
                                          Length second_leg);

/// How far a junction is from where it would be in equilibrium.
struct JunctionOffset {
  Length from_plane;  ///< from the plane of the three ends, in which every junction in equilibrium lies
  Length from_middle; ///< from the straight line between the stay's end and the middle of the legs' ends
};

/// Both are 0 for a junction in equilibrium with equal legs and ends equally far from the stay's; with
/// unequal legs only the first one is. Source: geometry and the equilibrium of the junction. Nothing when
/// the three ends lie in one line.
std::optional<JunctionOffset> junction_offset(const BridlePlaces& places);

} // namespace sheerpole
