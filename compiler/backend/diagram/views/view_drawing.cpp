#include "backend/diagram/views/view_drawing.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/views/view_frame.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "units/format_length.hpp"
#include "wording/papers/diagram_words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

std::string id_in(const ViewFrame& frame, std::string_view what, std::string_view name) {
  return fmt::format("{}-{}-{}", id_of(frame), what, element_id(name));
}

void draw_reference_lines(const ViewFrame& frame, const ViewExtent& extent, ShapeGroup& into) {
  if (frame.kind != ViewKind::deck)
    into.add(LineShape{waterline_end(frame, extent, true), waterline_end(frame, extent, false),
                       reference_line_style(), fmt::format("{}-waterline", id_of(frame))});
  if (frame.kind != ViewKind::side) {
    const PaperPoint top = centreline_top(frame, extent);
    into.add(LineShape{
        top,
        {top.x, frame.origin.y + extent.bottom * frame.millimetres_per_metre + reference_line_overrun},
        reference_line_style(),
        fmt::format("{}-centreline", id_of(frame))});
  }
}

void draw_spreaders(const Rig& rig, const ViewFrame& frame, ShapeGroup& into) {
  for (const Spreader& spreader : rig.spreaders) {
    ShapeGroup group{id_in(frame, "spreader", spreader.name),
                     spreader.title.empty() ? spreader.name : spreader.title,
                     {},
                     {}};
    group.add(LineShape{
        frame.at(rig[spreader.root].position), frame.at(rig[spreader.tip].position), spreader_style(), {}});
    into.add(std::move(group));
  }
}

void draw_stays(const Rig& rig, const ViewFrame& frame, ShapeGroup& into) {
  for (const DrawnStay& drawn : drawn_stays(rig, frame)) {
    const Stay& stay = *drawn.stay;
    const std::string sides = drawn.both_sides            ? say(DiagramPhrase::port_starboard)
                              : stay.side == Side::centre ? ""
                                                          : fmt::format(", {}", name_of(stay.side));
    ShapeGroup group{id_in(frame, "stay", stay.name), shown_name(stay) + sides, {}, {}};
    for (std::size_t i = 0; i + 1 < drawn.path.size(); ++i)
      group.add(LineShape{drawn.path[i], drawn.path[i + 1], line_style(rig[stay.material].kind), {}});
    into.add(std::move(group));
  }
}

bool uses(const Rig& rig, LineMaterial::Kind kind) {
  return std::any_of(rig.stays.begin(), rig.stays.end(),
                     [&](const Stay& stay) { return rig[stay.material].kind == kind; });
}

constexpr double key_row_height = 4.2;
constexpr LineMaterial::Kind rare_kinds[] = {LineMaterial::Kind::rod, LineMaterial::Kind::chain};

} // namespace

PaperPoint centreline_top(const ViewFrame& frame, const ViewExtent& extent) {
  return {frame.origin.x,
          frame.origin.y + extent.top * frame.millimetres_per_metre - reference_line_overrun};
}

PaperPoint waterline_end(const ViewFrame& frame, const ViewExtent& extent, bool left) {
  const double x = frame.origin.x + (left ? extent.left : extent.right) * frame.millimetres_per_metre;
  return {left ? x - reference_line_overrun : x + reference_line_overrun, frame.origin.y};
}

void draw_view_lines(const Rig& rig, const ViewFrame& frame, const ViewExtent& extent, ShapeGroup& into) {
  draw_reference_lines(frame, extent, into);
  draw_spreaders(rig, frame, into);
  draw_stays(rig, frame, into);
}

void draw_view_points(const Rig& rig, const ViewFrame& frame, ShapeGroup& into) {
  for (const Point& point : rig.points) {
    ShapeGroup group{{}, point.title.empty() ? point.name : point.title + " (" + point.name + ")", {}, {}};
    group.add(point_mark(frame.at(point.position), id_in(frame, "point", point.name)));
    into.add(std::move(group));
  }
}

ShapeGroup scale_bar(ScaleBarUnit unit, double millimetres_per_metre, double longest, PaperPoint at,
                     double text_size) {
  const bool metric = unit == ScaleBarUnit::metres;
  const double one =
      millimetres_per_metre * (metric ? 1.0 : 0.3048); // the foot is exact by definition (1959)
  // 1, 2, 5, 10 …: begin far below what any sheet needs and take the last that fits.
  double total = 1e-3;
  int fields = 5;
  for (double power = 1e-3; power < 1e9; power *= 10)
    for (const double step : {1.0, 2.0, 5.0})
      if (step * power * one <= longest) {
        total = step * power;
        fields = step == 2.0 ? 4 : 5;
      }
  const double field = total * one / fields;
  const char* symbol = metric ? "m" : "ft";
  ShapeGroup bar{metric ? "scale-bar-metres" : "scale-bar-feet",
                 metric ? say(DiagramPhrase::scale_bar_metres, format_number(total))
                        : say(DiagramPhrase::scale_bar_feet, format_number(total)),
                 {},
                 {}};
  for (int i = 0; i < fields; ++i)
    bar.add(RectangleShape{{at.x + i * field, at.y, at.x + (i + 1) * field, at.y + 1.5},
                           {0.18, 0.0, {}, i % 2 == 0 ? 0.0 : 1.0},
                           {}});
  const double base = at.y + 1.5 + 1.1 * text_size;
  bar.add(TextShape{{at.x, base}, "0", text_size, TextAnchor::start, false, {}});
  bar.add(TextShape{{at.x + total * one, base},
                    fmt::format("{} {}", format_number(total), symbol),
                    text_size,
                    TextAnchor::middle,
                    false,
                    {}});
  return bar;
}

double view_key_height(const Rig& rig) {
  double height = 45.0;
  for (const auto kind : rare_kinds)
    if (uses(rig, kind))
      height += key_row_height;
  return height;
}

ShapeGroup view_key(const Rig& rig, double scale, PaperPoint at) {
  constexpr double sample = 18.0;
  ShapeGroup key{"key", say(DiagramPhrase::key_lines), {}, {}};
  double y = at.y + 2.0;
  const auto words = [&](std::string text) {
    key.add(TextShape{{at.x + sample + 3.0, y + 0.35 * plain_text_size},
                      std::move(text),
                      plain_text_size,
                      TextAnchor::start,
                      false,
                      {}});
    y += key_row_height;
  };
  const auto row = [&](const ShapeStyle& style, std::string text) {
    key.add(LineShape{{at.x, y}, {at.x + sample, y}, style, {}});
    words(std::move(text));
  };
  row(line_style(LineMaterial::Kind::wire), say(DiagramPhrase::wire));
  row(line_style(LineMaterial::Kind::rope), say(DiagramPhrase::rope));
  for (const auto kind : rare_kinds)
    if (uses(rig, kind))
      row(line_style(kind), std::string(name_of(kind)));
  row(spreader_style(), say(DiagramPhrase::spreader));
  row(reference_line_style(), say(DiagramPhrase::waterline_or_centreline_no_part));
  key.add(point_mark({at.x + sample / 2, y}, {}));
  words(say(DiagramPhrase::point_as_named_rig_file));

  const double millimetres_per_metre = 1000.0 / scale;
  key.add(TextShape{{at.x, y + 3.4},
                    say(DiagramPhrase::scale_1, format_number(scale)),
                    plain_text_size,
                    TextAnchor::start,
                    true,
                    {}});
  key.add(scale_bar(ScaleBarUnit::metres, millimetres_per_metre, 70.0, {at.x, y + 5.5}));
  key.add(scale_bar(ScaleBarUnit::feet, millimetres_per_metre, 70.0, {at.x, y + 12.5}));
  return key;
}

} // namespace sheerpole
