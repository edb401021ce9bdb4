#pragma once

#include "backend/drawing/drawing.hpp"

namespace sheerpole {

enum class ScaleBarUnit { metres, feet };

/// A bar of black and white fields, as long as a round number of the unit gives without being longer than
/// `longest` millimetres; `at` is the upper left corner. The bar is 1.5 mm high and its numbers stand below
/// it, 6 mm in all. `millimetres_per_metre` is of the sheet.
ShapeGroup scale_bar(ScaleBarUnit unit, double millimetres_per_metre, double longest, PaperPoint at);

} // namespace sheerpole
