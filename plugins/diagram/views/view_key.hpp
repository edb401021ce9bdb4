#pragma once

#include "backend/drawing/drawing.hpp"

namespace sheerpole {

inline constexpr double view_key_height = 45.0;
inline constexpr double view_key_width = 84.0;

/// What the lines of the views mean, and scale bars in metres and feet.
ShapeGroup view_key(double scale, PaperPoint at);

} // namespace sheerpole
