#pragma once

#include "backend/diagram/stay_strips.hpp"
#include "backend/diagram/strips/strip_content.hpp"
#include "backend/drawing/drawing.hpp"

namespace sheerpole {

/// Height of the bar with its mark, its numbers and the two lines below it, in a cell `width` wide;
/// millimetres.
double adjuster_bar_height(const StripAdjuster& adjuster, double width);

/// Draws the range of an adjuster from its shortest, left, to its longest with a mark where it is set, and
/// what is left either way. `at` is the upper left corner.
void draw_adjuster_bar(const StripAdjuster& adjuster, PaperPoint at, double width, ShapeGroup& into);

/// Height of one row with everything below the symbols.
double row_height(const Strip& strip, const StripRow& row);

/// Draws the row with its upper left corner at `at`: symbols, distances, names, lengths, adjuster bars.
void draw_row(const Strip& strip, const StripRow& row, PaperPoint at, ShapeGroup& into);

} // namespace sheerpole
