#pragma once

#include "plugins/rig-drawing/hull_outline.hpp"
#include "plugins/rig-drawing/projection.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole::rig_drawing {

/// A stay as a view shows it.
struct StayInView {
  const Stay* stay = nullptr;
  std::vector<PaperPoint> path;
};

/// One view: the rig of all masts, or of one.
struct RigView {
  const Rig* rig = nullptr;
  std::optional<HullOutline> hull;
  Projection projection;
  std::string mast = {}; ///< name of the mast that is shown alone; empty for all

  std::string id(std::string_view what, std::string_view name) const;
};

/// The room that the rig, its spars and the hull take in a view, metres from the boat's axes.
Extent extent_of(const RigView& view);

/// Draws hull, waterline or centreline, spars, spreaders, stays and pins.
void draw_view(const RigView& view, const Extent& extent, ShapeGroup& into);

/// The stays with a path, in the order of the rig.
std::vector<StayInView> stays_in(const RigView& view);

/// Whether the two sides of every stay lie on one line.
bool sides_coincide(const RigView& view);

/// The end of a spar: from its heel as long as stated, else to the farthest point on it. Nothing when
/// neither is known.
std::optional<Vector3> end_of(const Rig& rig, const Spar& spar);

} // namespace sheerpole::rig_drawing
