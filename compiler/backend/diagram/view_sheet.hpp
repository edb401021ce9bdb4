#pragma once

#include "backend/diagram/views/view_frame.hpp"
#include "backend/drawing/drawing.hpp"

#include <functional>
#include <string>

namespace sheerpole {

/// Where a reader gets to who follows the line or the name of a stay; empty: nowhere.
using StayLink = std::function<std::string(const Stay& stay)>;

/// One view of the rig with its names, to the largest usual scale at which it fits this width and height,
/// millimetres; as large as need be where none of the usual scales lets its names fit.
Drawing view_sheet(const CheckedRig& checked, ViewKind kind, double width, double height,
                   const StayLink& link);

} // namespace sheerpole
