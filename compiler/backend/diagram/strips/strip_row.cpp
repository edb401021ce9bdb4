#include "backend/diagram/strips/strip_row.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/symbols/part_symbol.hpp"
#include "backend/drawing/label_text.hpp"
#include "wording/papers/diagram_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr double side_room = 2.0;
constexpr double mark_height = 1.4; // of the mark that stands on the bar
constexpr double bar_height = 2.0;
constexpr double end_text_height = 3.4; // the ends of the range stand below it

std::vector<std::string> ways_left(const StripAdjuster& adjuster, double width) {
  std::vector<std::string> lines = wrap_label(adjuster.tighten, small_text_size, width - 2 * side_room);
  for (std::string& line : wrap_label(adjuster.slacken, small_text_size, width - 2 * side_room))
    lines.push_back(std::move(line));
  return lines;
}

constexpr double dimension_height = 7.0; // pin-to-pin line above the symbols
constexpr double axis_below_top = dimension_height + symbol_half_height + 0.5;
constexpr double tick_top = axis_below_top + symbol_half_height + 0.5;
constexpr double tick_bottom = tick_top + 1.4;
constexpr double names_top = tick_bottom + 4.2;
constexpr double strip_padding = 1.5;

std::vector<std::string> title_lines(const StripCell& cell, double width) {
  return wrap_label(cell.title, plain_text_size, width - 2 * strip_padding);
}

std::vector<std::string> length_lines(const StripCell& cell, double width) {
  return cell.length.empty() ? std::vector<std::string>{}
                             : wrap_label(cell.length, plain_text_size, width - 2 * strip_padding, true);
}

double text_height(const std::vector<std::string>& lines) {
  return line_spacing * plain_text_size * static_cast<double>(lines.size());
}

void draw_middled(const std::vector<std::string>& lines, double x, double y, bool bold, ShapeGroup& into) {
  double base = y + plain_text_size;
  for (const std::string& line : lines) {
    into.add(TextShape{{x, base}, line, plain_text_size, TextAnchor::middle, bold, {}});
    base += line_spacing * plain_text_size;
  }
}

/// The line with two strokes across a gap: it is longer than drawn.
void draw_broken_line(const StripCell& cell, double left, double right, double axis, ShapeGroup& into) {
  ShapeStyle style = line_style(cell.line_kind);
  style.stroke_width += 0.2;
  const double middle = (left + right) / 2;
  into.add(LineShape{{left, axis}, {middle - 1.2, axis}, style, {}});
  into.add(LineShape{{right, axis}, {middle + 1.2, axis}, style, {}});
  for (const double side : {-1.2, 1.2})
    into.add(LineShape{
        {middle + side - 0.8, axis + 2.4}, {middle + side + 0.8, axis - 2.4}, {0.3, 0.0, {}, {}}, {}});
}

/// End parts lie with their line side towards the line, boat fittings with their pin towards the stay.
bool is_turned(const Strip& strip, std::size_t index) {
  const StripCell& cell = strip.cells[index];
  if (cell.boat_fitting)
    return index > 0;
  if (index > 0 && strip.cells[index - 1].line)
    return true;
  if (index + 1 < strip.cells.size() && strip.cells[index + 1].line)
    return false;
  return std::any_of(strip.cells.begin(), strip.cells.begin() + static_cast<std::ptrdiff_t>(index),
                     [](const StripCell& before) { return before.line; });
}

void draw_arrow(PaperPoint tip, double direction, ShapeGroup& into) {
  into.add(
      PolygonShape{{tip, {tip.x + direction * 2.0, tip.y - 0.5}, {tip.x + direction * 2.0, tip.y + 0.5}},
                   {0.0, 0.0, {}, 0.0},
                   {}});
}

/// From the upper pin to the lower one.
void draw_dimension(const Strip& strip, double left, double right, double top, ShapeGroup& into) {
  const double y = top + 4.6;
  into.add(LineShape{{left, y}, {right, y}, {0.13, 0.0, {}, {}}, {}});
  draw_arrow({left, y}, 1.0, into);
  draw_arrow({right, y}, -1.0, into);
  for (const double x : {left, right})
    into.add(LineShape{{x, y - 1.5}, {x, top + axis_below_top - 2.0}, {0.13, 0.35, {}, {}}, {}});
  into.add(TextShape{{(left + right) / 2, y - 1.0},
                     say(DiagramPhrase::pin_pin_mm, strip.pin_to_pin),
                     plain_text_size,
                     TextAnchor::middle,
                     true,
                     {}});
}

/// What stands below the symbol of one cell: name, length, range.
double words_height(const StripCell& cell, double width) {
  return text_height(title_lines(cell, width)) + text_height(length_lines(cell, width)) +
         (cell.adjuster ? adjuster_bar_height(*cell.adjuster, width) : 0.0);
}

} // namespace

double adjuster_bar_height(const StripAdjuster& adjuster, double width) {
  return mark_height + bar_height + end_text_height +
         line_spacing * small_text_size * static_cast<double>(ways_left(adjuster, width).size());
}

void draw_adjuster_bar(const StripAdjuster& adjuster, PaperPoint at, double width, ShapeGroup& into) {
  const double left = at.x + side_room;
  const double right = at.x + width - side_room;
  const double top = at.y + mark_height;
  const double set = left + adjuster.share * (right - left);
  into.add(RectangleShape{{left, top, right, top + bar_height}, {0.2, 0.0, {}, 1.0}, {}});
  into.add(RectangleShape{{left, top, set, top + bar_height}, {0.2, 0.0, {}, 0.8}, {}});
  into.add(PolygonShape{
      {{set, top + bar_height}, {set - 0.9, top - 1.1}, {set + 0.9, top - 1.1}}, {0.0, 0.0, {}, 0.0}, {}});
  const double base = top + bar_height + 0.3 + 0.95 * small_text_size;
  into.add(TextShape{{left, base}, adjuster.shortest, small_text_size, TextAnchor::start, false, {}});
  into.add(TextShape{{right, base}, adjuster.longest, small_text_size, TextAnchor::end, false, {}});
  draw_text_block(ways_left(adjuster, width), {left, top + bar_height + end_text_height}, small_text_size,
                  false, into);
}

double row_height(const Strip& strip, const StripRow& row) {
  double highest = 0.0;
  for (std::size_t i = 0; i < row.widths.size(); ++i)
    highest = std::max(highest, words_height(strip.cells[row.first + i], row.widths[i]));
  return names_top + highest;
}

void draw_row(const Strip& strip, const StripRow& row, PaperPoint at, ShapeGroup& into) {
  const double axis = at.y + axis_below_top;
  std::vector<double> edges{at.x + row_end_room};
  for (const double width : row.widths)
    edges.push_back(edges.back() + width);
  const std::size_t past = row.first + row.widths.size();
  const bool first_row = row.first == 0;
  const bool last_row = past == strip.cells.size();

  ShapeGroup pins;
  for (std::size_t i = 0; i < row.widths.size(); ++i) {
    const StripCell& cell = strip.cells[row.first + i];
    const double left = edges[i];
    const double right = edges[i + 1];
    const double middle = (left + right) / 2;
    const double width = row.widths[i];
    if (cell.line)
      draw_broken_line(cell, left, right, axis, into);
    for (int n = 0; n < (cell.line ? 0 : cell.count); ++n) {
      const double one = width / cell.count;
      draw_part_symbol(cell.look,
                       {left + n * one, left + (n + 1) * one, axis, is_turned(strip, row.first + i)}, into);
      if (n > 0)
        pins.add(CircleShape{{left + n * one, axis}, 1.0, {0.3, 0.0, {}, 0.0}, {}});
    }
    if (cell.pinned_above)
      pins.add(CircleShape{{left, axis}, 1.0, {0.3, 0.0, {}, 0.0}, {}});
    double y = at.y + names_top;
    draw_middled(title_lines(cell, width), middle, y, false, into);
    y += text_height(title_lines(cell, width));
    draw_middled(length_lines(cell, width), middle, y, true, into);
    y += text_height(length_lines(cell, width));
    if (cell.adjuster)
      draw_adjuster_bar(*cell.adjuster, {left, y}, width, into);
  }
  for (DrawnNode& pin : pins.children)
    into.children.push_back(std::move(pin));

  for (std::size_t i = 0; i < edges.size(); ++i) {
    const std::string& distance = strip.distances[row.first + i];
    if (distance.empty())
      continue;
    into.add(
        LineShape{{edges[i], at.y + tick_top}, {edges[i], at.y + tick_bottom}, {0.25, 0.0, {}, {}}, {}});
    into.add(TextShape{{edges[i], at.y + tick_bottom + 0.3 + small_text_size},
                       distance,
                       small_text_size,
                       TextAnchor::middle,
                       false,
                       {}});
  }
  if (first_row && last_row && !strip.cells.empty()) {
    const double upper = strip.cells.front().boat_fitting ? edges[1] : edges.front();
    const double lower = strip.cells.back().boat_fitting ? edges[edges.size() - 2] : edges.back();
    if (upper < lower)
      draw_dimension(strip, upper, lower, at.y, into);
  }
  // A row that goes on may end with an eye, which stands over the edge.
  constexpr double beside_fitting = 1.5;
  constexpr double beside_eye = 4.2;
  into.add(
      TextShape{{edges.front() - (first_row ? beside_fitting : beside_eye), axis + 0.35 * plain_text_size},
                first_row ? strip.upper_end : say(DiagramPhrase::above),
                first_row ? plain_text_size : small_text_size,
                TextAnchor::end,
                first_row,
                {}});
  into.add(
      TextShape{{edges.back() + (last_row ? beside_fitting : beside_eye), axis + 0.35 * plain_text_size},
                last_row ? strip.lower_end : say(DiagramPhrase::below),
                last_row ? plain_text_size : small_text_size,
                TextAnchor::start,
                last_row,
                {}});
}

} // namespace sheerpole
