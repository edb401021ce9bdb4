#pragma once

#include "backend/drawing/drawing.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Advance width of a text in ems, for a generic sans-serif face: the widths of the Helvetica metrics (from
/// memory of the Adobe Core 14 AFM files, which the metric-compatible faces share), each rounded up to
/// 1/100 em. A character that is not in the table counts as wide as the widest one that is. Text is UTF-8.
double text_width_in_ems(std::string_view text, bool bold = false);

/// Width of one screen column in ems of a face of fixed pitch: Liberation Mono, as all that follow the
/// metrics of Courier, has 1229/2048 (the `hmtx` table of the font), rounded up. Wide signs take two.
inline constexpr double fixed_pitch_in_ems = 0.601;

/// How much wider than the estimate a common sans-serif face may run. Viewers that do not fit a text to its
/// stated length draw it about this wide at most, so every label keeps that much room.
inline constexpr double wide_face_allowance = 1.25;

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

/// Breaks a text into lines whose label boxes are at most `width` millimetres wide, at blanks that are not
/// inside a quantity, or inside a
/// word that is wider than a line: after a hyphen where there is one. At least one line, also for an empty
/// text; no text is lost but the blanks at the breaks. A single character wider than a line stands alone.
std::vector<std::string> wrap_label(std::string_view text, double size, double width, bool bold = false);

} // namespace sheerpole
