#pragma once

#include "calculate/strength/spreader_tip.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerpole {

/// A line that goes over the tip of a spreader.
struct LineOverTip {
  StayId stay;
  std::size_t stop = 0; ///< in its path
  bool clamped = false;
  std::optional<TipBend> bend; ///< nothing when two places are one
  double rise_radians = 0.0;   ///< of the spreader, outwards
  /// The rise that would halve the angle of the line. Nothing when the line does not bend towards the mast
  /// in the plane in which the spreader can be lifted.
  std::optional<double> halving_radians;

  /// How much too high (more than 0) or too low the tip is to halve the angle of the line.
  double off_bisector() const { return halving_radians ? rise_radians - *halving_radians : 0.0; }
};

/// What meets at the tip of a spreader. A rise is counted from level, in the upright plane through the
/// spreader; that of a strut that is nearer to upright than to level (a dolphin striker) from upright, in
/// the upright plane along the line.
struct SpreaderTip {
  std::size_t spreader = 0; ///< in Rig::spreaders
  std::vector<LineOverTip> lines;
  std::vector<StayId> ending; ///< stays with an end there
};

/// Each spreader with what meets at its tip, in the order of the rig. Source of the angles: the line
/// presses along the bisector of its two parts, see bisecting_elevation() and tip_bend().
std::vector<SpreaderTip> spreader_tips(const Rig& rig);

/// The line by which a spreader is set: one that is clamped to it goes before those that run free, and of
/// several the one whose angle it halves best. Null when no line bends over it.
const LineOverTip* line_that_sets(const SpreaderTip& tip);

} // namespace sheerpole
