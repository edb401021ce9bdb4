#pragma once

#include "backend/drawing/drawing.hpp"

namespace sheerpole {

/// The shapes drawn `scale` times as large, with what was the corner of their sheet at `at`. Widths of
/// lines, dashes and texts are scaled too. Links and ids are kept.
ShapeGroup placed(const ShapeGroup& group, PaperPoint at, double scale);

} // namespace sheerpole
