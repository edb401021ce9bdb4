#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>
#include <span>
#include <vector>

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

/// Least break load of a forestay: factor RM30 / (I + fs), I being the height of the stay above the sheer
/// and fs the freeboard at the mast, so that their sum is the height above the waterline. From memory of
/// the Nordic Boat Standard as given in Larsson and Eliasson, Principles of Yacht Design, ch. 11: factor 15
/// for the forestay and 12 for an inner one at its own height; the factors were not read. It screens, it
/// does not size a rig. Nothing unless the moment, the factor and the height above the waterline are more
/// than zero.
std::optional<Force> forestay_break_load(double righting_moment_newton_metres, Length height_above_sheer,
                                         Length freeboard_at_mast, double factor);

// The two cases of side load by which a rig is screened across the boat. Source of the form: Nordic Boat
// Standard as given in Larsson and Eliasson, Principles of Yacht Design, ch. 11 (read in an excerpt): T =
// RM / (height above the waterline); a force on the mast between two levels is shared in proportion to
// distance. It screens, it does not size a rig.

/// The side force that balances the righting moment at this height above the waterline: T = RM / a. For the
/// headsail alone a is that of the uppermost shroud, for the reefed main that of its centre. Nothing unless
/// both are more than zero.
std::optional<Force> side_force_at(double righting_moment_newton_metres, Length above_waterline);

/// What is taken of a reefed mainsail. All four from memory of the same publication and not read: 0.40 of T
/// at the head, 0.33 at the boom, 0.6 of the luff left, its centre a third up from the boom.
struct ReefedMain {
  double head_share = 0.0;
  double boom_share = 0.0;
  double luff_left = 0.0;
  double centre_up_luff = 0.0;
};

/// The forces of the reefed main and the heights at which they act, above the deck.
struct ReefedMainLoad {
  Force total; ///< T
  Force head;
  Force boom;
  Length head_height;
  Length boom_height;
};

/// `luff` is that of the whole sail, `boom` the height of the boom above the deck, `freeboard` that of the
/// deck above the waterline. Nothing unless the moment, the luff and the height of the centre above the
/// waterline are more than zero, the boom not below the deck, and each share between 0 and 1.
std::optional<ReefedMainLoad> reefed_main_load(double righting_moment_newton_metres, Length luff,
                                               Length boom, Length freeboard, const ReefedMain& reefed);

/// Shares a force on the mast between the supports above and below it by the lever rule: each takes the
/// part of the other's distance. `heights` are those of the levels above the deck, rising; the deck itself
/// is the support below the lowest, and what it takes is not in the answer. So the boom gives to the lowest
/// level its height over that of the level. Source: statics of a beam on two supports; which supports is
/// the method's. The answer has one force for each level. Nothing when the heights do not rise from above
/// zero, or the force acts below the deck or above the highest level, where it lies between no two
/// supports.
std::optional<std::vector<Force>> share_between_levels(std::span<const Length> heights, Force force,
                                                       Length at);

// Screening of the shrouds from the righting moment: a total load, the share of one shroud, and a factor on
// its break load. It screens, it does not size a rig. Nothing unless every input is more than zero.

/// Total transverse load on the shrouds of one side: P = factor RM30 / b, `righting_moment` in newton
/// metres at 30 degrees of heel and b the half beam at the chainplates. Source: Kinney, Skene's Elements of
/// Yacht Design, 8th ed., as worked in Toss, The Complete Rigger's Apprentice, fig. 5-25 (read in worked
/// examples), with a factor of 1.5 for a mast that carries the headsails; 0.5 in one example of a mizzen.
std::optional<Force> transverse_shroud_load(double righting_moment_newton_metres, Length half_beam,
                                            double factor);

/// What one shroud carries of it: share x P. Source of the method as above. Shares read: with one spreader
/// and double lowers 0.45 for the upper and 0.325 for each lower. From memory of Skene's: 0.60 for a single
/// lower (0.55 was used in a worked example), and for two spreaders 0.30, 0.30 and 0.25 each of two lowers
/// or 0.48 of one; these were not read. The share is at most 1.
std::optional<Force> shroud_load(Force transverse_load, double share);

/// The break load that the shroud has to have: factor x load. Source: arithmetic. Factors read in worked
/// examples: 2.25 to 2.75; 2 inshore, 3 coastal and 4 offshore are common practice, no source.
std::optional<Force> required_break_load(Force load, double factor);

/// Tension of the one shroud that holds a mast level when the boat lies on her side: share x W /
/// sin(angle), the angle being between shroud and mast, in radians. With `share_at_head` 1/2 an even mast
/// hangs half its weight on the heel and half on the shroud, W / (2 sin(angle)). Source: statics; the rule
/// with a half is common practice, no source. Nothing when the weight is less than zero, the share not
/// between 0 and 1, or the angle not between 0 and a quarter turn, 0 excluded.
std::optional<Force> shroud_of_lying_mast(Force mast_weight, double share_at_head, double angle_radians);

/// A place of the mast that is held sideways: at a pair of spreaders, or at the top.
struct MastLevel {
  Length height;       ///< of mast and spreader root above the chainplates
  Force side_force;    ///< F, that presses the mast to leeward here, 0 or more
  Length spreader_tip; ///< how far the tip is from the axis of the mast; not used at the top
  Length tip_rise;     ///< how much higher the tip is than its root; not used at the top
};

/// What the lines, the spreader and the mast carry at one level.
struct LevelEquilibrium {
  Force diagonal;                        ///< D: from the mast to the tip or the chainplate below
  double diagonal_to_mast_radians = 0.0; ///< beta
  Force vertical;                        ///< V: from the tip here to the tip or the chainplate below
  double vertical_lean_radians = 0.0;    ///< gamma: more than zero where it runs outwards downwards
  Force spreader_compression;            ///< C, along the spreader; less than zero: it is pulled outwards
  Force mast_compression;                ///< in the panel below this level, of these forces alone
};

/// All levels, the lowest first. At the top there is no vertical and no spreader: those are zero.
struct TransverseEquilibrium {
  std::vector<LevelEquilibrium> levels;
  Force chainplate_pull;         ///< sum of the vertical parts at the windward chainplates
  double moment_newton_metres{}; ///< of the side forces about the axis at the height of the chainplates
};

/// Forces across the boat of a mast with spreaders in line with it, by the equilibrium of every joint, from
/// the top down. With e the rise of a spreader, A the pull of the lines above on its tip, A_in = D
/// sin(beta)
/// + V sin(gamma) inwards and A_up = D cos(beta) + V cos(gamma) upwards:
///   top: D = F / sin(beta);
///   tip: V = (A_up cos(e) + A_in sin(e)) / cos(gamma - e), C = (A_in cos(gamma) - A_up sin(gamma)) /
///        cos(gamma - e);
///   mast: D = (F + C cos(e)) / sin(beta).
/// Then sum(F h) = y (D_1 cos(beta_1) + V_1 cos(gamma_1)) at chainplates y from the axis.
///
/// Source: statics, exact for what it assumes: joints that turn freely, lines that do not slide on the
/// tips, no fore-and-aft angle, every line to the axis of the mast, the leeward side slack, no pretension,
/// small movements. Where the lower panels stiffen the mast as a beam the shares shift.
///
/// `levels` from the lowest to the highest; heights rise from above zero. Nothing for no level, an input
/// out of its range, a line that would have to push or would not run downwards, or a spreader that droops
/// so steeply that it points the way its line goes on.
std::optional<TransverseEquilibrium> transverse_equilibrium(std::span<const MastLevel> levels,
                                                            Length chainplate_from_axis);

} // namespace sheerpole
