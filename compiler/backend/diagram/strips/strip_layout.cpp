#include "backend/diagram/strips/strip_layout.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/strips/strip_row.hpp"
#include "backend/drawing/element_id.hpp"
#include "backend/drawing/label_box.hpp"
#include "backend/drawing/wrap_label.hpp"

namespace sheerpole {

namespace {

constexpr double heading_size = 3.2;
constexpr double summary_gap = 3.0;

double least_width(const StripCell& cell) {
  return cell.line ? 42.0 : cell.adjuster ? 42.0 : cell.boat_fitting ? 26.0 : 33.0;
}

/// Cells go into a row while they fit; what is left of the width goes to the pieces of line, or to all
/// cells.
void widen(const Strip& strip, StripRow& row, double spare) {
  std::size_t lines = 0;
  for (std::size_t i = 0; i < row.widths.size(); ++i)
    lines += strip.cells[row.first + i].line ? 1 : 0;
  if (lines == 0)
    return;
  for (std::size_t i = 0; i < row.widths.size(); ++i)
    if (strip.cells[row.first + i].line)
      row.widths[i] += spare / static_cast<double>(lines);
}

std::string heading_of(const Strip& strip) {
  std::string heading = strip.title + (strip.sides.empty() ? "" : ", " + strip.sides);
  return strip.draft ? heading + " (DRAFT)" : heading;
}

std::string summary_of(const Strip& strip) {
  return strip.name + ": pin-to-pin " + strip.pin_to_pin + " mm, " + strip.summary;
}

/// Title and summary on one line where they fit, else below each other. Returns the y below them.
double draw_heading(const Strip& strip, PaperPoint at, double width, ShapeGroup& into) {
  const std::string heading = heading_of(strip);
  const std::string summary = summary_of(strip);
  const double heading_width =
      label_box({{}, heading, heading_size, TextAnchor::start, true, {}}).width() + summary_gap;
  const double summary_width =
      label_box({{}, summary, plain_text_size, TextAnchor::start, false, {}}).width();
  if (heading_width + summary_width > width) {
    const double y =
        draw_text_block(wrap_label(heading, heading_size, width, true), at, heading_size, true, into);
    return draw_text_block(wrap_label(summary, plain_text_size, width), {at.x, y}, plain_text_size, false,
                           into);
  }
  const double base = at.y + heading_size;
  into.add(TextShape{{at.x, base}, heading, heading_size, TextAnchor::start, true, {}});
  into.add(TextShape{{at.x + heading_width, base}, summary, plain_text_size, TextAnchor::start, false, {}});
  return at.y + line_spacing * heading_size;
}

} // namespace

StripLayout lay_out_strip(const Strip& strip, double width) {
  StripLayout layout;
  const double room = width - 2 * row_end_room;
  double left = room;
  for (std::size_t i = 0; i < strip.cells.size(); ++i) {
    const double least = least_width(strip.cells[i]);
    if (layout.rows.empty() || least > left) {
      if (!layout.rows.empty())
        widen(strip, layout.rows.back(), left);
      layout.rows.push_back({i, {}});
      left = room;
    }
    layout.rows.back().widths.push_back(least);
    left -= least;
  }
  if (!layout.rows.empty())
    widen(strip, layout.rows.back(), left);
  ShapeGroup measured;
  double y = draw_heading(strip, {}, width, measured);
  for (const StripRow& row : layout.rows)
    y += row_height(strip, row);
  layout.height = y;
  return layout;
}

void draw_strip(const Strip& strip, const StripLayout& layout, PaperPoint at, double width,
                ShapeGroup& into) {
  ShapeGroup group{"strip-" + element_id(strip.name), heading_of(strip), summary_of(strip), {}};
  double y = draw_heading(strip, at, width, group);
  for (const StripRow& row : layout.rows) {
    draw_row(strip, row, {at.x, y}, group);
    y += row_height(strip, row);
  }
  into.add(std::move(group));
}

} // namespace sheerpole
