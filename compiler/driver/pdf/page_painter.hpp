#pragma once

#include "driver/pdf/text_painter.hpp"

#include <cairo.h>

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// Draws a page that backend/drawing/svg_writer.cpp wrote: groups, lines, polylines, polygons, circles,
/// rectangles and texts in millimetres. That is all of SVG which our drawings use; anything else is refused
/// and never left out silently. Returns what went wrong, or nothing.
std::optional<std::string> paint_page(cairo_t* context, std::string_view svg, TextPainter& texts);

} // namespace sheerpole
