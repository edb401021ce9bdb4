#pragma once

#include "backend/backend.hpp"
#include "backend/drawing/drawing.hpp"
#include "backend/paper_words.hpp"

#include <string>

namespace sheerpole {

/// Margin of every sheet, millimetres, and sizes of its text.
inline constexpr double sheet_margin = 10.0;
inline constexpr double boat_title_size = 5.0;
inline constexpr double stay_text_size = 2.6;
inline constexpr double plain_text_size = 2.5;
inline constexpr double small_text_size = 2.3; ///< the smallest on any sheet; 2.2 mm is the limit

/// Writes boat title, `subtitle` and, when a number of the rig is assumed or missing, the word DRAFT with
/// how many, at the head of a sheet `width` wide. Returns the y below it.
double draw_sheet_head(const CheckedRig& checked, const std::string& subtitle, double width,
                       ShapeGroup& into);

/// Height of the foot, one line of small text and the rule above it.
inline constexpr double sheet_foot_height = 5.0;
/// What it is, whose and of which state of her rig, `note` where there is room for it, and the number of
/// the page (page/foot.hpp), in one line.
void draw_sheet_foot(const std::string& name, const std::string& identity, const std::string& edition,
                     const std::string& note, Drawing& sheet);
void draw_sheet_foot(const std::string& name, const CheckedRig& checked, Drawing& sheet);

/// Draws lines of text below each other; `at` is the upper left corner. Returns the y below the last.
double draw_text_block(const std::vector<std::string>& lines, PaperPoint at, double size, bool bold,
                       ShapeGroup& into);

/// Rope is drawn thicker than wire, so that one-colour print tells them apart: dashes would say hidden (ISO
/// 128-2), and the dashes of two lines that coincide fill each other.
ShapeStyle line_style(LineMaterial::Kind kind);

/// Thin, dash and dot: the waterline and the centreline, which are no part of the rig.
ShapeStyle reference_line_style();

/// Broad and grey.
ShapeStyle spreader_style();

/// The mark of a point.
CircleShape point_mark(PaperPoint at, std::string id);

} // namespace sheerpole
