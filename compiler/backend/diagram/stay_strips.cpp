#include "backend/diagram/stay_strips.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/strips/strip_row.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "backend/page/foot.hpp"
#include "wording/papers/diagram_words.hpp"

#include <algorithm>

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
  std::string heading = strip.title + led_by(", ", strip.sides);
  return strip.draft ? say(DiagramPhrase::draft, heading) : heading;
}

std::string summary_of(const Strip& strip) {
  return say(DiagramPhrase::pin_pin_summary, strip.name, strip.pin_to_pin, strip.summary);
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

constexpr double strip_gap = 4.0;

struct PlacedStrip {
  Strip strip;
  StripLayout layout;
};

std::string subtitle_of(std::size_t number, std::size_t of) {
  return say(DiagramPhrase::strips_stays_sheet_not_scale, number, of);
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

Drawing strip_drawing(const Strip& strip, double width, const std::string& word) {
  const StripLayout layout = lay_out_strip(strip, width);
  Drawing drawing;
  drawing.width = width;
  drawing.title = say(DiagramPhrase::strip, strip.name) + led_by(", ", word);
  drawing.description = say(DiagramPhrase::parts_from_upper_end_left);
  double y = 0.0;
  ShapeGroup group;
  if (!word.empty()) {
    // Ids are those of the strip, which may be drawn a second time as it is now.
    group.id = "when-" + word;
    y = draw_text_block({word}, {0.0, 0.0}, plain_text_size, true, group);
  }
  draw_strip(strip, layout, {0.0, y}, width, group);
  if (!word.empty())
    if (auto* drawn = std::get_if<ShapeGroup>(&group.children.back().content()))
      drawn->id += "-" + word;
  drawing.content = std::move(group);
  drawing.height = y + layout.height;
  return drawing;
}

const Strip* find_strip(const std::vector<Strip>& strips, const Stay& stay) {
  const auto of = [&](const std::string& name) {
    return std::find_if(strips.begin(), strips.end(), [&](const Strip& one) { return one.name == name; });
  };
  auto found = of(stay.name);
  if (found == strips.end())
    found = of(stay.base);
  return found == strips.end() ? nullptr : &*found;
}

std::vector<Drawing> stay_strips(const CheckedRig& checked) {
  const Drawing usual; // A3 landscape
  const double width = usual.width - 2 * sheet_margin;
  ShapeGroup measured;
  const double top = draw_sheet_head(checked, subtitle_of(99, 99), usual.width, measured) + 4.0;
  const double bottom = usual.height - sheet_margin - sheet_foot_height;

  std::vector<std::vector<PlacedStrip>> sheets(1);
  double y = top;
  for (Strip& strip : strip_contents(checked)) {
    StripLayout layout = lay_out_strip(strip, width);
    if (y > top && y + layout.height > bottom) {
      sheets.emplace_back();
      y = top;
    }
    y += layout.height + strip_gap;
    sheets.back().push_back({std::move(strip), std::move(layout)});
  }

  std::vector<Drawing> drawings;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    Drawing drawing;
    drawing.title = say(DiagramPhrase::strips_stays_sheet, boat_title(checked), i + 1, sheets.size());
    drawing.description = sheets[i].empty() ? say(DiagramPhrase::rig_file_states_no_stays)
                                            : say(DiagramPhrase::each_stay_as_row_parts);
    drawing.content.id = "sheet";
    const std::string subtitle = sheets[i].empty() ? say(DiagramPhrase::strips_stays_no_stays_stated)
                                                   : subtitle_of(i + 1, sheets.size());
    draw_sheet_head(checked, subtitle, drawing.width, drawing.content);
    double strip_top = top;
    for (const PlacedStrip& placed : sheets[i]) {
      draw_strip(placed.strip, placed.layout, {sheet_margin, strip_top}, width, drawing.content);
      strip_top += placed.layout.height + strip_gap;
    }
    // A strip higher than the sheet stands alone on it, and the sheet grows.
    drawing.height = std::max(drawing.height, strip_top - strip_gap + sheet_foot_height + sheet_margin);
    draw_sheet_foot(say(DiagramPhrase::stay_strips), checked, drawing);
    drawings.push_back(std::move(drawing));
  }
  number_pages(drawings);
  return drawings;
}

} // namespace sheerpole
