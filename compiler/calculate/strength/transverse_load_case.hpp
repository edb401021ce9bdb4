#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>
#include <span>
#include <vector>

namespace sheerpole {

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

} // namespace sheerpole
