#pragma once

#include "backend/drawing/drawing.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Advance width of a text in ems, for a generic sans-serif face: the widths of the Helvetica metrics (from
/// memory of the Adobe Core 14 AFM files, which the metric-compatible faces share), each rounded up to
/// 1/100 em. A character that is not in the table counts as wide as the widest one that is. Text is UTF-8.
double text_width_in_ems(std::string_view text, bool bold = false);

/// As large as `size`, smaller where the text would be wider than its room.
double fitted(const std::string& text, double size, bool bold, double room);

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

/// A line of which there is no room for the rest: "…" in place of its last two characters.
std::string broken_off(std::string line);

/// For each site the index of the port that it is joined to by a straight line, so that no two of the lines
/// cross. Ports all have the same x and different y. Any pair that crosses is exchanged; each exchange
/// makes the sum of the lengths smaller (triangle inequality), so this ends.
std::vector<std::size_t> join_without_crossing(const std::vector<PaperPoint>& sites,
                                               const std::vector<PaperPoint>& ports);

/// Middles of bands of the given heights that lie one below the other without overlap between `top` and
/// `bottom`, each as near as can be to the wanted middle (least squares), in their order.
std::vector<double> spread_apart(const std::vector<double>& wanted, const std::vector<double>& heights,
                                 double top, double bottom);

/// Text that wants to stand beside a view, joined to a site in it.
struct LabelRequest {
  std::vector<std::string> lines; ///< at least one
  PaperPoint site;                ///< what the leader points to
  double size = 2.5;              ///< em, millimetres
  bool bold = false;
  bool ringed = false; ///< a small ring where the leader ends, for a site that has no mark of its own
  std::string id;      ///< of the group that the label becomes; may be empty
};

/// A column of labels at one side of a view.
struct LabelColumn {
  double edge = 0.0;   ///< x of the edge of the text that is nearest to the view
  bool to_left = true; ///< the text lies to the left of the edge, else to the right
  double top = 0.0;    ///< room for the labels; must be at least column_height() of the requests
  double bottom = 0.0;
};

/// Clear distance between the text and its leader, and length of the level piece of a leader, millimetres.
inline constexpr double leader_gap = 0.8;
inline constexpr double leader_stub = 2.5;

/// Height that one label takes with its clearance.
double label_height(const LabelRequest& request);
/// Height that a column of these labels needs.
double column_height(const std::vector<LabelRequest>& requests);
/// Widest label box.
double column_width(const std::vector<LabelRequest>& requests);

/// Draws the labels of a column with their leaders into `into`, one group a label, from top to bottom.
/// Labels never overlap. Leaders of one column do not cross, except where labels of different heights find
/// no such order.
void place_labels(const std::vector<LabelRequest>& requests, const LabelColumn& column, ShapeGroup& into);

} // namespace sheerpole
