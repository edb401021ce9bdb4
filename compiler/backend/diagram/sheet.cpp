#include "backend/diagram/sheet.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/page/foot.hpp"
#include "wording/papers/diagram_words.hpp"

namespace sheerpole {

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
  if (const std::string waiting = waiting_words(checked); !waiting.empty())
    y = block(say(DiagramPhrase::draft_do_not_cut, waiting), y, plain_text_size, true);
  return y;
}

void draw_sheet_foot(const std::string& name, const std::string& identity, const std::string& edition,
                     const std::string& note, Drawing& sheet) {
  std::vector<std::string> lines;
  for (const std::string& words :
       {name + ", " + identity + ". " + note, name + ", " + identity, name + ", " + edition}) {
    lines = foot_lines(words, sheet.width - 2.0 * sheet_margin, small_text_size);
    if (lines.size() == 1)
      break;
  }
  add_foot(lines, sheet_margin, sheet, small_text_size);
}

void draw_sheet_foot(const std::string& name, const CheckedRig& checked, Drawing& sheet) {
  draw_sheet_foot(name, identity_words(checked), edition_words(checked),
                  say(DiagramPhrase::sheerpole_reports_what_rig_file), sheet);
}

ShapeStyle line_style(LineMaterial::Kind kind) {
  switch (kind) {
  case LineMaterial::Kind::rope:
    return {0.7, 0.0, {}, {}};
  case LineMaterial::Kind::chain:
    return {1.0, 0.0, {}, {}};
  case LineMaterial::Kind::rod:
    return {0.5, 0.0, {}, {}};
  case LineMaterial::Kind::wire:
    break;
  }
  return {0.35, 0.0, {}, {}};
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
