#pragma once

#include "model/point.hpp"
#include "model/rig.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole::rig_drawing {

/// The hull as far as the file knows it: an outline to see the rig against, of which nothing may be taken.
struct HullOutline {
  double bow = 0.0; ///< x of its ends, metres
  double stern = 0.0;
  std::vector<Vector3> sheer;     ///< from the bow aft, in the plane of the boat
  std::vector<Vector3> waterline; ///< its two ends; empty when the length of the waterline is not stated
  std::vector<Vector3> deck;      ///< starboard half from the bow aft; empty: its shape is not drawn
  std::optional<double> half_beam;
  bool deck_as_stated = false; ///< the deck is that of `deck-edge`; else any shape of that length and beam
};

/// From `deck-edge`, else from length overall, beam, waterline and sheer about the chainplates and the
/// stem: nothing when neither is stated. Between the heights that are known the sheer is a parabola. The
/// hulls of a boat that is broader than half her length are not drawn: their shape is not stated.
std::optional<HullOutline> hull_outline(const Rig& rig);

/// What of the hull is not drawn, and why: a sentence each.
std::vector<std::string> undrawn_of_hull(const Rig& rig, const std::optional<HullOutline>& hull);

} // namespace sheerpole::rig_drawing
