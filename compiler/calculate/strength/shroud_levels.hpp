#pragma once

#include "calculate/strength/transverse_loads.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One level of a mast on one side, with what holds it there.
struct ShroudLevel {
  MastLevel level;      ///< without a side force
  std::string place;    ///< "lower-root"; at the top the point where the shroud is made fast
  std::string tip;      ///< "lower-tip"; empty at the top
  std::string spreader; ///< "lower-spreader"; empty at the top
  /// What leads from the mast here to the tip or the chainplate below: "lower-shroud".
  std::vector<std::string> diagonals;
  PointId point; ///< on the mast
};

/// The rig of one side as the formula of joint equilibrium asks for it.
struct ShroudLevels {
  std::vector<ShroudLevel> levels; ///< the lowest first; the last is the top
  Length chainplate_from_axis;
  Length off_middle;          ///< how far from the middle of the mast its shrouds are made fast
  std::string chainplate;     ///< "plate"
  std::vector<Remark> misses; ///< not empty: what of the rig the formula does not hold for
};

/// Reads the levels off the points of the rig: the path of this cap shroud gives tips and chainplate, the
/// spreaders give their roots, and at every root another shroud of the same side has to lead from the mast
/// to the tip below, or to the chainplate. Lengths across are from where the shrouds are made fast on the
/// mast, which is to be the same all the way up.
///
/// The formula is for one plane across the boat. It is taken to hold while nothing leads more than 3
/// degrees fore or aft of it (its cosine is 0.9986), and places that should be one lie within 2 % of the
/// half beam across and of their height up and down: choices of the project, no source.
ShroudLevels shroud_levels(const Rig& rig, const Stay& cap);

} // namespace sheerpole
