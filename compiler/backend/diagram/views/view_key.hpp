#pragma once

#include "backend/backend.hpp"
#include "backend/drawing/drawing.hpp"

namespace sheerpole {

/// With a row for each sort of line that is neither rope nor wire.
double view_key_height(const Rig& rig);
inline constexpr double view_key_width = 84.0;

/// What the lines of the views mean, and scale bars in metres and feet.
ShapeGroup view_key(const Rig& rig, double scale, PaperPoint at);

} // namespace sheerpole
