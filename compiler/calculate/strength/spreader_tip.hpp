#pragma once

#include "calculate/strength/space_point.hpp"
#include "units/force.hpp"

#include <optional>

namespace sheerpole {

// A line that bends over the tip of a spreader. Source of all: equilibrium of the tip, exact for a line
// with one tension above and below, that is without friction on the tip and not clamped to it. Angles in
// radians.

/// What the line presses on the tip, along the bisector of its two parts: 2 T sin(bend / 2), the bend being
/// 0 for a straight line. Nothing when the tension is less than zero or the bend not between 0 and pi.
std::optional<Force> bend_thrust(Force tension, double bend_radians);

/// How far a spreader has to rise outwards to halve the angle of the line, in a plane across the boat:
/// (beta + gamma) / 2, beta and gamma being how far the parts above and below lean outwards on their way
/// down. Nothing unless beta is more than gamma, or when one is a quarter turn or more.
std::optional<double> bisecting_elevation(double lean_above_radians, double lean_below_radians);

/// The part of the thrust that is square to a spreader off the bisector by this angle: 2 T sin(bend / 2)
/// sin(off). Nothing as of bend_thrust, or when the angle is not between 0 and pi.
std::optional<Force> tip_side_force(Force tension, double bend_radians, double off_bisector_radians);

enum class TipPush {
  none,     ///< the line is straight there, or bends square to the spreader
  inwards,  ///< towards the mast: the spreader is pressed
  outwards, ///< away from the mast: the spreader would be pulled
};

/// What a line does to a tip, in space.
struct TipBend {
  double bend_radians = 0.0;       ///< 0 for a straight line
  double thrust_share = 0.0;       ///< along the spreader over the tension; more than zero inwards
  double resultant_share = 0.0;    ///< of both parts of the line over the tension
  double off_spreader_radians = 0; ///< between the resultant and the line of the spreader, 0 to pi / 2
  TipPush push = TipPush::none;
};

/// The resultant of the line's two pulls of T on the tip is T (u + v), u and v being the directions from
/// the tip to the next places of the line. `root` is where the spreader meets the mast. A bend of less than
/// 1e-9 counts as straight. Nothing when a place coincides with the tip or the line folds back on itself.
std::optional<TipBend> tip_bend(const SpacePoint& above, const SpacePoint& tip, const SpacePoint& below,
                                const SpacePoint& root);

} // namespace sheerpole
