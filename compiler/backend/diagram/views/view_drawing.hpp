#pragma once

#include "backend/diagram/views/view_frame.hpp"

namespace sheerpole {

/// Draws reference lines, spreaders and stays of one view.
void draw_view_lines(const Rig& rig, const ViewFrame& frame, const ViewExtent& extent, ShapeGroup& into);

/// Draws the marks of the points.
void draw_view_points(const Rig& rig, const ViewFrame& frame, ShapeGroup& into);

/// How far the waterline and the centreline run beyond the rig, millimetres.
inline constexpr double reference_line_overrun = 3.0;

/// Upper end of the centreline, and the end of the waterline at the given side.
PaperPoint centreline_top(const ViewFrame& frame, const ViewExtent& extent);
PaperPoint waterline_end(const ViewFrame& frame, const ViewExtent& extent, bool left);

} // namespace sheerpole
