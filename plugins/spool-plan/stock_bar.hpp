#pragma once

#include "backend/backend.hpp"
#include "backend/drawing/drawing.hpp"

#include <string>
#include <vector>

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

/// Sizes of text on the sheets of the plan, millimetres.
inline constexpr double plan_title_size = 5.0;
inline constexpr double plan_heading_size = 3.2;
inline constexpr double plan_text_size = 2.5;
inline constexpr double plan_small_size = 2.3;
/// Width on which bars lie, millimetres.
inline constexpr double bar_room = 400.0;

/// Millimetres of paper for a millimetre of stock. All bars of a plan have one scale; a long rest is drawn
/// broken off, so that the pieces are as large as they can be.
double plan_scale(const SpoolPlan& plan);

/// Draws one stock as a bar with its pieces, kerfs and rest, its words above and the list of its pieces
/// below; `top_left` is the upper left corner. `first_number` is that of its first piece. Returns the y
/// below it.
double draw_bar(const LineOrder& line, const SpoolUse& use, std::size_t first_number, double scale,
                PaperPoint top_left, const std::string& id, ShapeGroup& into);

/// Text lines below each other; `at` is the upper left corner. Returns the y below the last.
double draw_words(const std::string& text, PaperPoint at, double size, double width, bool bold,
                  ShapeGroup& into);

} // namespace sheerpole
