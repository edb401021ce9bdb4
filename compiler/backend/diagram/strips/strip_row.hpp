#pragma once

#include "backend/diagram/strips/strip_layout.hpp"

namespace sheerpole {

/// Height of one row with everything below the symbols.
double row_height(const Strip& strip, const StripRow& row);

/// Draws the row with its upper left corner at `at`: symbols, distances, names, lengths, adjuster bars.
void draw_row(const Strip& strip, const StripRow& row, PaperPoint at, ShapeGroup& into);

} // namespace sheerpole
