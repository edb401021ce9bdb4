#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <cmath>
#include <optional>

namespace sheerpole {

/// A place in boat axes: x forward, y to starboard, z up.
struct SpacePoint {
  Length x, y, z;
};

/// A vector in boat axes without a unit, or of newtons where the name says so.
struct SpaceVector {
  double x = 0.0, y = 0.0, z = 0.0;

  friend SpaceVector operator+(SpaceVector a, SpaceVector b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
  friend SpaceVector operator-(SpaceVector a, SpaceVector b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
  friend SpaceVector operator*(double factor, SpaceVector a) {
    return {factor * a.x, factor * a.y, factor * a.z};
  }
};

inline double dot_product(SpaceVector a, SpaceVector b) {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

inline SpaceVector cross_product(SpaceVector a, SpaceVector b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

inline double magnitude(SpaceVector a) {
  return std::hypot(a.x, a.y, a.z);
}

/// In metres.
inline SpaceVector vector_between(const SpacePoint& from, const SpacePoint& to) {
  return {to.x.metres() - from.x.metres(), to.y.metres() - from.y.metres(),
          to.z.metres() - from.z.metres()};
}

/// Of length 1, from one place to the other. Nothing when they are one place.
inline std::optional<SpaceVector> direction_between(const SpacePoint& from, const SpacePoint& to) {
  const SpaceVector way = vector_between(from, to);
  const double length = magnitude(way);
  if (!(length > 0.0) || !std::isfinite(length))
    return std::nullopt;
  return (1.0 / length) * way;
}

/// Between 0 and pi, exact to the last digits for small angles too. Source: atan2(|a x b|, a . b).
inline double angle_between(SpaceVector a, SpaceVector b) {
  return std::atan2(magnitude(cross_product(a, b)), dot_product(a, b));
}

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
