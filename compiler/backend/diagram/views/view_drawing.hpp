#pragma once

#include "backend/backend.hpp"
#include "backend/diagram/sheet.hpp"
#include "backend/diagram/views/view_frame.hpp"
#include "backend/drawing/drawing.hpp"

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

enum class ScaleBarUnit { metres, feet };

/// A bar of black and white fields, as long as a round number of the unit gives without being longer than
/// `longest` millimetres; `at` is the upper left corner. The bar is 1.5 mm high and its numbers stand below
/// it, 6 mm in all. `millimetres_per_metre` is of the sheet.
ShapeGroup scale_bar(ScaleBarUnit unit, double millimetres_per_metre, double longest, PaperPoint at,
                     double text_size = small_text_size);

/// With a row for each sort of line that is neither rope nor wire.
double view_key_height(const Rig& rig);
inline constexpr double view_key_width = 84.0;

/// What the lines of the views mean, and scale bars in metres and feet.
ShapeGroup view_key(const Rig& rig, double scale, PaperPoint at);

} // namespace sheerpole
