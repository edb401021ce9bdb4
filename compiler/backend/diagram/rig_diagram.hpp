#pragma once

#include "backend/backend.hpp"
#include "backend/drawing/drawing.hpp"

namespace sheerpole {

/// The sheet with the side view, the view from astern and the deck view, all to the largest usual scale at
/// which every label has its place. A rig without points gets a sheet that says so.
Drawing rig_diagram(const CheckedRig& checked);

} // namespace sheerpole
