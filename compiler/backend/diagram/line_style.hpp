#pragma once

#include "backend/backend.hpp"
#include "backend/drawing/drawing.hpp"

namespace sheerpole {

/// Wire is drawn solid, rope in long dashes, so that one-colour print tells them apart.
ShapeStyle line_style(LineMaterial::Kind kind);

/// Thin, dash and dot: the waterline and the centreline, which are no part of the rig.
ShapeStyle reference_line_style();

/// Broad and grey.
ShapeStyle spreader_style();

/// The mark of a point.
CircleShape point_mark(PaperPoint at, std::string id);

} // namespace sheerpole
