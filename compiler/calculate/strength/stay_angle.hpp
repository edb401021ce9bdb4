#pragma once

#include "calculate/strength/space_point.hpp"
#include "units/force.hpp"

#include <optional>

namespace sheerpole {

// Angles in radians. Source of all: equilibrium of the joint, exact.

/// Between a stay and the mast, both looking down: 0 along the mast. `stay_top` to `stay_foot` is the part
/// of the stay that meets the mast, `mast_top` to `mast_foot` any two places of the mast's axis. Nothing
/// when two places of a pair are one.
std::optional<double> stay_angle(const SpacePoint& stay_top, const SpacePoint& stay_foot,
                                 const SpacePoint& mast_top, const SpacePoint& mast_foot);

/// Tension of the stay over the side force that it holds: 1 / sin(angle). Nothing unless the angle is
/// between 0 and pi, both excluded.
std::optional<double> tension_over_side_force(double angle_radians);

/// Compression that the stay brings into the mast over the side force that it holds: 1 / tan(angle).
/// Nothing unless the angle is more than 0 and at most a quarter turn.
std::optional<double> compression_over_side_force(double angle_radians);

/// F / sin(angle). Nothing when the force is less than zero or as of tension_over_side_force.
std::optional<Force> tension_holding_side_force(Force side_force, double angle_radians);

/// The tension of the stay on the other side of the mast that balances this one: T sin(angle) / sin(other).
/// So a backstay answers a forestay at one masthead. Nothing when the tension is less than zero or an angle
/// not between 0 and pi, both excluded.
std::optional<Force> balancing_tension(Force tension, double angle_radians, double other_angle_radians);

/// What bends a chainplate sideways when the pull is out of its plane by this angle: T sin(angle), 3.5 % of
/// the tension at 2 degrees and 8.7 % at 5. Nothing when the tension is less than zero or the angle not
/// between 0 and a quarter turn.
std::optional<Force> chainplate_side_force(Force tension, double out_of_plane_radians);

} // namespace sheerpole
