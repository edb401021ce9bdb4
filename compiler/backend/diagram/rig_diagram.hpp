#pragma once

#include "backend/backend.hpp"
#include "backend/diagram/views/view_frame.hpp"
#include "backend/drawing/drawing.hpp"

#include <functional>
#include <string>

namespace sheerpole {

/// The sheet with the side view, the view from astern and the deck view, all to the largest usual scale at
/// which every label has its place. A rig without points gets a sheet that says so.
Drawing rig_diagram(const CheckedRig& checked);

/// Where a reader gets to who follows the line or the name of a stay; empty: nowhere.
using StayLink = std::function<std::string(const Stay& stay)>;

/// One view of the rig with its names, to the largest usual scale at which it fits this width and height,
/// millimetres; as large as need be where none of the usual scales lets its names fit.
Drawing view_sheet(const CheckedRig& checked, ViewKind kind, double width, double height,
                   const StayLink& link);

} // namespace sheerpole
