#pragma once

#include "backend/drawing/drawing.hpp"
#include "backend/table/tune_tables.hpp"

namespace sheerpole {

/// The rig from starboard and from astern: as drawn, dashed, and as it stands, every movement so many times
/// as large; tensions in kN beside the stays.
struct StandingDrawing {
  Drawing drawing;
  double exaggeration = 1.0;
};
StandingDrawing standing_drawing(const CheckedRig& checked, const TunedRig& tuned);

} // namespace sheerpole
