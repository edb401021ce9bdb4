#include "backend/diagram/sheet.hpp"

#include "backend/drawing/label_text.hpp"

#include <fmt/format.h>

#include <set>

namespace sheerpole {

namespace {

std::size_t draft_pieces(const CheckedRig& checked) {
  std::set<std::string> pieces;
  for (const DraftReason& reason : checked.draft_reasons())
    pieces.insert(reason.subject);
  return pieces.size();
}

} // namespace

double draw_text_block(const std::vector<std::string>& lines, PaperPoint at, double size, bool bold,
                       ShapeGroup& into) {
  double base = at.y + size;
  for (const std::string& line : lines) {
    into.add(TextShape{{at.x, base}, line, size, TextAnchor::start, bold, {}});
    base += line_spacing * size;
  }
  return base - size;
}

double draw_sheet_head(const CheckedRig& checked, const std::string& subtitle, double width,
                       ShapeGroup& into) {
  const double room = width - 2 * sheet_margin;
  const auto block = [&](const std::string& text, double y, double size, bool bold) {
    return draw_text_block(wrap_label(text, size, room, bold), {sheet_margin, y}, size, bold, into);
  };
  double y = block(boat_title(checked), sheet_margin, boat_title_size, true);
  y = block(subtitle, y, plain_text_size, false);
  const std::size_t drafts = draft_pieces(checked);
  if (drafts > 0)
    y = block(fmt::format("DRAFT: {} {} on numbers that are assumed or missing; the cut list names them.",
                          drafts, drafts == 1 ? "piece rests" : "pieces rest"),
              y, plain_text_size, true);
  return y;
}

void draw_sheet_foot(const std::string& note, double height, ShapeGroup& into) {
  into.add(TextShape{{sheet_margin, height - sheet_margin},
                     note + " Sheerpole reports what the rig file states; it does not size a rig.",
                     small_text_size,
                     TextAnchor::start,
                     false,
                     {}});
}

ShapeStyle line_style(LineMaterial::Kind kind) {
  switch (kind) {
  case LineMaterial::Kind::rope:
    return {0.5, 0.0, {3.6, 1.2}, {}};
  case LineMaterial::Kind::chain:
    return {0.6, 0.0, {0.9, 0.7}, {}};
  case LineMaterial::Kind::rod:
    return {0.7, 0.0, {}, {}};
  case LineMaterial::Kind::wire:
    break;
  }
  return {0.4, 0.0, {}, {}};
}

ShapeStyle reference_line_style() {
  return {0.13, 0.25, {5.0, 1.0, 0.4, 1.0}, {}};
}

ShapeStyle spreader_style() {
  return {1.0, 0.55, {}, {}};
}

CircleShape point_mark(PaperPoint at, std::string id) {
  return {at, 0.55, {0.0, 0.0, {}, 0.0}, std::move(id)};
}

} // namespace sheerpole
