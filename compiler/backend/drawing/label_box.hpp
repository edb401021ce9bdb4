#pragma once

#include "backend/drawing/drawing.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Width that a text is set to, millimetres: the estimate of text_width.hpp.
double set_width(const TextShape& text);

/// The room that a text may need in any face: set width with the allowance for a wide face, growing away
/// from the anchor; 0.95 em above the base line (capitals with accents) and 0.25 em below.
PaperBox label_box(const TextShape& text);

/// Distance from one base line to the next in a text of several lines, and the height of a text of one
/// line, ems.
inline constexpr double line_spacing = 1.25;

struct LabelBox {
  std::string text;
  double size; ///< em, millimetres
  PaperBox box;
};

/// Every text of the drawing with its box, in the order in which it is drawn.
std::vector<LabelBox> label_boxes(const Drawing& drawing);

} // namespace sheerpole
