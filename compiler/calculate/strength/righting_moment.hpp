#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

// Moments in newton metres, heel in radians from 0 to a quarter turn.

/// RM = m g GM sin(heel), for the small angles, about 10 degrees, at which the metacentre stays where it
/// is. GM is less than zero for a boat that does not stand by herself. Source: hydrostatics, exact for its
/// assumption. Nothing unless the mass is more than zero and the heel in its range.
std::optional<double> small_angle_righting_moment(double displacement_kilograms, Length metacentric_height,
                                                  double heel_radians);

/// What the righting moment gains by taking a weight from that height above the centre of gravity:
/// w z sin(heel), not w z. Source: statics, exact while the displacement hardly changes. Nothing when the
/// weight is less than zero or the heel out of range.
std::optional<double> righting_moment_of_weight_aloft(Force weight, Length height, double heel_radians);

/// A power law of the righting moment at 30 degrees by length of waterline, through two places of a graph,
/// and how far boats lie from it.
struct RightingMomentCurve {
  Length shorter_waterline;
  double shorter_newton_metres = 0.0;
  Length longer_waterline;
  double longer_newton_metres = 0.0;
  double scatter = 0.0; ///< plus or minus, as a share of the moment; 0 or more and less than 1
};

/// 37 000 lbf ft at 32 ft and 80 000 lbf ft at 40 ft, which is a power of 3.456. Source: read off the graph
/// of Skene's Elements of Yacht Design as reprinted in Toss, The Complete Rigger's Apprentice, fig. 5-24.
/// The scatter of 30 % is an estimate without a source: users of the graph read 1 to 6 % more than the
/// power gives in between, and boats of one length differ by much more.
inline constexpr RightingMomentCurve righting_moment_graph{
    .shorter_waterline = Length::inches(32.0 * 12.0),
    .shorter_newton_metres = 37'000.0 * 4.4482216152605 * 0.3048,
    .longer_waterline = Length::inches(40.0 * 12.0),
    .longer_newton_metres = 80'000.0 * 4.4482216152605 * 0.3048,
    .scatter = 0.30,
};

/// A moment and the range that the scatter leaves.
struct RightingMomentEstimate {
  double newton_metres = 0.0;
  double least_newton_metres = 0.0;
  double most_newton_metres = 0.0;
};

/// RM30 = RM_1 (L / L_1)^p with p = ln(RM_2 / RM_1) / ln(L_2 / L_1). It is no substitute for an inclining
/// test. Source: the curve's; the power law is this project's way between two places of it. Nothing unless
/// the curve rises between two lengths, each number of it and the waterline being more than zero.
std::optional<RightingMomentEstimate> righting_moment_by_waterline(const RightingMomentCurve& curve,
                                                                   Length waterline);

} // namespace sheerpole
