#pragma once

#include "backend/backend.hpp"
#include "backend/drawing/drawing.hpp"

#include <string_view>

namespace sheerpole {

/// From where the rig is seen.
enum class ViewKind {
  side,  ///< from starboard: bow to the right, up is up
  front, ///< from astern, looking forward: starboard to the right, up is up
  deck   ///< from above: bow up, starboard to the right
};

/// "side", "front", "deck": the word with which the ids of the view begin.
std::string_view name_of(ViewKind kind);

/// Where the boat's axes lie on the sheet.
struct ViewFrame {
  ViewKind kind = ViewKind::side;
  double millimetres_per_metre = 10.0;
  PaperPoint origin; ///< of the boat's axes

  PaperPoint at(const Vector3& position) const;
};

/// The part of the view plane that a rig takes, metres: across to the right, down.
struct ViewExtent {
  double left = 0.0;
  double right = 0.0;
  double top = 0.0;
  double bottom = 0.0;
};

/// Room for all points, and for the waterline and the centreline where the view shows them.
ViewExtent extent_of(const Rig& rig, ViewKind kind);

} // namespace sheerpole
