#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>
#include <span>
#include <vector>

namespace sheerpole {

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
