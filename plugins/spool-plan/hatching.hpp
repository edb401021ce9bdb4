#pragma once

#include "backend/drawing/drawing.hpp"

namespace sheerpole {

/// How a part of a bar is filled, so that one-colour print tells the parts apart.
enum class BarPattern {
  plain,   ///< a piece
  slant,   ///< a rest that is kept
  upright, ///< what is kept back as spare
  crossed, ///< waste
};

/// The outline with its pattern.
void draw_pattern(const PaperBox& box, BarPattern pattern, ShapeGroup& into);

} // namespace sheerpole
