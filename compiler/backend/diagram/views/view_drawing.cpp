#include "backend/diagram/views/view_drawing.hpp"

#include "backend/diagram/line_style.hpp"
#include "backend/diagram/views/drawn_stay.hpp"
#include "backend/drawing/element_id.hpp"

#include <fmt/format.h>

namespace sheerpole {

namespace {

std::string id_in(ViewKind view, std::string_view what, std::string_view name) {
  return fmt::format("{}-{}-{}", name_of(view), what, element_id(name));
}

void draw_reference_lines(const ViewFrame& frame, const ViewExtent& extent, ShapeGroup& into) {
  if (frame.kind != ViewKind::deck)
    into.add(LineShape{waterline_end(frame, extent, true), waterline_end(frame, extent, false),
                       reference_line_style(), fmt::format("{}-waterline", name_of(frame.kind))});
  if (frame.kind != ViewKind::side) {
    const PaperPoint top = centreline_top(frame, extent);
    into.add(LineShape{
        top,
        {top.x, frame.origin.y + extent.bottom * frame.millimetres_per_metre + reference_line_overrun},
        reference_line_style(),
        fmt::format("{}-centreline", name_of(frame.kind))});
  }
}

void draw_spreaders(const Rig& rig, const ViewFrame& frame, ShapeGroup& into) {
  for (const Spreader& spreader : rig.spreaders) {
    ShapeGroup group{id_in(frame.kind, "spreader", spreader.name),
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
    const std::string sides = drawn.both_sides            ? ", port and starboard"
                              : stay.side == Side::centre ? ""
                                                          : fmt::format(", {}", name_of(stay.side));
    ShapeGroup group{id_in(frame.kind, "stay", stay.name), shown_name(stay) + sides, {}, {}};
    // Segment by segment, so that dashes begin anew at each point: where two ropes run on together their
    // dashes fall together too, and do not fill each other's gaps.
    for (std::size_t i = 0; i + 1 < drawn.path.size(); ++i)
      group.add(LineShape{drawn.path[i], drawn.path[i + 1], line_style(rig[stay.material].kind), {}});
    into.add(std::move(group));
  }
}

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
    group.add(point_mark(frame.at(point.position), id_in(frame.kind, "point", point.name)));
    into.add(std::move(group));
  }
}

} // namespace sheerpole
