#include "plugins/rig-drawing/sheet_frame.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/page/foot.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "plugins/rig-drawing/iso_style.hpp"
#include "wording/papers/rig_drawing_words.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

namespace sheerpole::rig_drawing {

namespace {

constexpr double cell_room = 1.2; ///< left and right of the text of a cell

void write(ShapeGroup& into, PaperPoint at, const std::string& text, double size, bool bold = false,
           TextAnchor anchor = TextAnchor::start) {
  into.add(TextShape{at, text, size, anchor, bold, {}});
}

/// The lines of a cell; its face is named, so that the set width counts and not that of a wide one.
std::vector<std::string> cell_lines(const std::string& text, double width, bool bold = false) {
  std::vector<std::string> result;
  for (std::size_t begin = 0; begin <= text.size();) {
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    for (std::string& line : wrap_label(std::string_view(text).substr(begin, end - begin), plain_size,
                                        (width - 2.0 * cell_room) * wide_face_allowance, bold))
      result.push_back(std::move(line));
    begin = end + 1;
  }
  return result;
}

std::size_t lines_of_row(const DrawnTable& table, const std::vector<std::string>& cells) {
  std::size_t most = 1;
  for (std::size_t i = 0; i < cells.size(); ++i)
    most =
        std::max(most, cell_lines(cells[i], table.widths[i], !table.bold.empty() && table.bold[i]).size());
  return most;
}

constexpr double row_margin = 1.4; ///< above and below the texts of a row, together

double row_height(std::size_t lines) {
  return text_row * static_cast<double>(lines) + row_margin;
}

/// One field of the title block: what it is, small, and its value below.
void field(ShapeGroup& into, PaperBox box, const std::string& name, const std::string& value,
           bool bold = false, double size = plain_size) {
  into.add(RectangleShape{box, solid(0.35), {}});
  write(into, {box.left + cell_room, box.top + plain_size}, name, plain_size);
  std::vector<std::string> lines =
      wrap_label(value, size, (box.width() - 2.0 * cell_room) * wide_face_allowance, bold);
  double y = box.top + plain_size + 0.6 + size;
  for (const std::string& line : lines) {
    if (y > box.bottom - 0.5)
      break;
    write(into, {box.left + cell_room, y}, line, size, bold);
    y += size * line_spacing;
  }
}

/// The sign of first-angle projection: a cut cone from the side, and from its small end on the right.
void draw_first_angle(PaperPoint centre, ShapeGroup& into) {
  ShapeGroup group{"first-angle", say(RigDrawingPhrase::first_angle_projection), {}, {}};
  const double x = centre.x;
  const double y = centre.y;
  group.add(
      PolygonShape{{{x - 12, y - 2}, {x - 3, y - 4}, {x - 3, y + 4}, {x - 12, y + 2}}, solid(0.35), {}});
  group.add(CircleShape{{x + 7, y}, 4.0, solid(0.35), {}});
  group.add(CircleShape{{x + 7, y}, 2.0, solid(0.35), {}});
  group.add(LineShape{{x - 14, y}, {x - 1, y}, axis_style(), {}});
  group.add(LineShape{{x + 1.5, y}, {x + 12.5, y}, axis_style(), {}});
  group.add(LineShape{{x + 7, y - 5.5}, {x + 7, y + 5.5}, axis_style(), {}});
  into.add(std::move(group));
}

std::string or_not_given(const std::string& text) {
  return text.empty() ? say(RigDrawingPhrase::not_given) : text;
}

} // namespace

const std::vector<SheetSize>& sheet_sizes() {
  static const std::vector<SheetSize> sizes{
      {"A3", 420, 297}, {"A2", 594, 420}, {"A1", 841, 594}, {"A0", 1189, 841}};
  return sizes;
}

const SheetSize& upright_sheet() {
  static const SheetSize size{"A4", 210, 297};
  return size;
}

void draw_frame(const SheetSize& size, const CheckedRig& checked, Drawing& sheet) {
  const PaperBox frame = size.frame();
  sheet.content.add(RectangleShape{frame, solid(0.7), "frame"});
  const double x = (frame.left + frame.right) / 2.0;
  const double y = (frame.top + frame.bottom) / 2.0;
  const ShapeStyle mark = solid(0.7);
  // On an upright sheet tables reach from side to side, so the marks end at the frame.
  const double inside = size.width < size.height ? 0.0 : 5.0;
  sheet.content.add(LineShape{{x, 2.0}, {x, frame.top + inside}, mark, {}});
  sheet.content.add(LineShape{{x, frame.bottom}, {x, frame.bottom - inside}, mark, {}});
  sheet.content.add(LineShape{{2.0, y}, {frame.left + inside, y}, mark, {}});
  sheet.content.add(LineShape{{size.width - 2.0, y}, {frame.right - inside, y}, mark, {}});
  constexpr double margin = 4.0;
  constexpr double foot = plain_size;
  std::vector<std::string> lines =
      foot_lines(say(RigDrawingPhrase::rig_drawing_sheerpole_reports_does, identity_words(checked)),
                 size.width - 2.0 * margin, foot);
  if (lines.size() > 1)
    lines = foot_lines(say(RigDrawingPhrase::rig_drawing_begins, identity_words(checked)),
                       size.width - 2.0 * margin, foot);
  if (lines.size() > 1)
    lines = foot_lines(say(RigDrawingPhrase::rig_drawing_begins, edition_words(checked)),
                       size.width - 2.0 * margin, foot);
  add_foot(lines, margin, sheet, foot);
}

void draw_title_block(const SheetSize& size, const CheckedRig& checked, double scale, ShapeGroup& into) {
  const PaperBox frame = size.frame();
  const double left = frame.right - title_block_width;
  const double top = frame.bottom - title_block_height;
  const Rig& rig = checked.rig();
  ShapeGroup block{"title-block", say(RigDrawingPhrase::title_block), {}, {}};
  const auto box = [&](double x, double y, double width, double height) {
    return PaperBox{left + x, top + y, left + x + width, top + y + height};
  };
  field(block, box(0, 0, 60, 11), say(RigDrawingPhrase::owner),
        or_not_given(fact_text(rig.boat.particulars, fact_names.owner)));
  field(block, box(60, 0, 40, 11), say(RigDrawingPhrase::drawn_by), "");
  field(block, box(100, 0, 40, 11), say(RigDrawingPhrase::checked_by), "");
  const bool draft = !checked.draft_reasons().empty();
  field(block, box(140, 0, 40, 11), say(RigDrawingPhrase::status),
        draft ? say(RigDrawingPhrase::draft) : say(RigDrawingPhrase::as_file_states), draft);
  const std::string boat = boat_title(checked);
  constexpr double inside = 140.0 - 2.0 * cell_room;
  double title = title_size;
  for (const double smaller : {heading_size, plain_size})
    if (wrap_label(boat, title, inside * wide_face_allowance, true).size() > 1)
      title = smaller;
  field(block, box(0, 11, 140, 21), say(RigDrawingPhrase::title), "");
  const auto boat_lines = wrap_label(boat, title, inside * wide_face_allowance, true);
  write(block, {left + cell_room, top + 11 + plain_size + 1.5 + title * 0.9}, boat_lines.front(), title,
        true);
  write(block, {left + cell_room, top + 11 + 18.5},
        say(RigDrawingPhrase::rig_drawing_standing_rigging_general), plain_size);
  field(block, box(140, 11, 40, 21), say(RigDrawingPhrase::first_angle), "");
  draw_first_angle({left + 160, top + 23.5}, block);
  field(block, box(0, 32, 30, 12), say(RigDrawingPhrase::scale),
        scale > 0.0 ? "1:" + format_number(scale) : say(RigDrawingPhrase::none), true);
  field(block, box(30, 32, 50, 12), say(RigDrawingPhrase::digest),
        say(RigDrawingPhrase::rig, checked.digest().substr(0, 8)));
  field(block, box(80, 32, 60, 12), say(RigDrawingPhrase::date_report), or_not_given(rig.boat.report_date));
  field(block, box(140, 32, 40, 12), say(RigDrawingPhrase::revision),
        or_not_given(fact_text(rig.boat.particulars, fact_names.revision)), true);
  field(block, box(0, 44, 30, 12), say(RigDrawingPhrase::size), size.name);
  field(block, box(30, 44, 50, 12), say(RigDrawingPhrase::unit), "mm");
  field(block, box(80, 44, 60, 12), say(RigDrawingPhrase::language), say(RigDrawingPhrase::language_code));
  field(block, box(140, 44, 40, 12), say(RigDrawingPhrase::sheet), say(RigDrawingPhrase::one_of_one));
  block.add(RectangleShape{{left, top, frame.right, frame.bottom}, solid(0.7), {}});
  into.add(std::move(block));
}

double table_height(const DrawnTable& table) {
  double height = table.headings.empty() ? 0.0 : row_height(lines_of_row(table, table.headings));
  for (const auto& cells : table.rows)
    height += row_height(lines_of_row(table, cells));
  return height;
}

double draw_table(const DrawnTable& table, PaperPoint at, const std::string& id, ShapeGroup& into) {
  ShapeGroup group{id, {}, {}, {}};
  double width = 0.0;
  for (const double each : table.widths)
    width += each;
  double y = at.y;
  const auto draw_row = [&](const std::vector<std::string>& cells, bool heading) {
    const double height = row_height(lines_of_row(table, cells));
    double x = at.x;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const bool bold = heading || (!table.bold.empty() && table.bold[i]);
      const bool right = !table.right.empty() && table.right[i];
      double base = y + row_margin / 2.0 + 0.9 * plain_size;
      for (const std::string& line : cell_lines(cells[i], table.widths[i], bold)) {
        write(group, {right ? x + table.widths[i] - cell_room : x + cell_room, base}, line, plain_size,
              bold, right ? TextAnchor::end : TextAnchor::start);
        base += text_row;
      }
      x += table.widths[i];
    }
    y += height;
    group.add(LineShape{{at.x, y}, {at.x + width, y}, solid(heading ? 0.5 : 0.18), {}});
  };
  if (!table.headings.empty())
    draw_row(table.headings, true);
  for (const auto& cells : table.rows)
    draw_row(cells, false);
  if (!table.headings.empty()) {
    double x = at.x;
    for (std::size_t i = 0; i + 1 < table.widths.size(); ++i) {
      x += table.widths[i];
      group.add(LineShape{{x, at.y}, {x, y}, solid(0.18), {}});
    }
    group.add(RectangleShape{{at.x, at.y, at.x + width, y}, solid(0.5), {}});
  }
  into.add(std::move(group));
  return y;
}

namespace {

/// "3 values stated over the file; after the first season"
std::string layer_words(const Rig& rig, const Record& layer) {
  const auto values =
      std::count_if(rig.differences.begin(), rig.differences.end(), [&](const Difference& one) {
        return one.origin == Difference::Origin::layer && one.origin_name == layer.name;
      });
  std::string words = values == 0   ? say(RigDrawingPhrase::changes_nothing_in_file)
                      : values == 1 ? say(RigDrawingPhrase::one_value_changed)
                                    : say(RigDrawingPhrase::values_changed, values);
  return words + led_by("; ", fact_text(layer.facts, fact_names.note));
}

DrawnTable revisions(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  DrawnTable table{{say(RigDrawingPhrase::revision), say(RigDrawingPhrase::what),
                    say(RigDrawingPhrase::date), say(RigDrawingPhrase::by)},
                   {28.0, 88.0, 30.0, 34.0},
                   {}};
  for (const Record& layer : rig.records)
    if (layer.kind == RecordKind::layer)
      table.rows.push_back({say(RigDrawingPhrase::as_layer, layer.name), layer_words(rig, layer),
                            fact_text(layer.facts, fact_names.date),
                            fact_text(layer.facts, fact_names.by)});
  const std::string now = fact_text(rig.boat.particulars, fact_names.revision);
  if (!now.empty())
    table.rows.push_back({now, say(RigDrawingPhrase::drawing), rig.boat.report_date, ""});
  return table;
}

constexpr double above_title_block = 1.0;

} // namespace

double revisions_height(const CheckedRig& checked) {
  const DrawnTable table = revisions(checked);
  return table.rows.empty() ? 0.0 : table_height(table) + above_title_block;
}

void draw_revisions(const SheetSize& size, const CheckedRig& checked, ShapeGroup& into) {
  const DrawnTable table = revisions(checked);
  if (table.rows.empty())
    return;
  const PaperBox frame = size.frame();
  draw_table(
      table,
      {frame.right - title_block_width, frame.bottom - title_block_height - revisions_height(checked)},
      "revisions", into);
}

namespace {

constexpr double number_column = 7.0;

} // namespace

double notes_height(const std::vector<std::string>& notes, double width) {
  double height = text_row + 2.5;
  for (const std::string& note : notes)
    height += row_height(cell_lines(note, width - number_column).size());
  return height;
}

double draw_notes(const std::vector<std::string>& notes, PaperPoint at, double width, ShapeGroup& into) {
  ShapeGroup group{"notes", say(RigDrawingPhrase::notes), {}, {}};
  write(group, {at.x, at.y + plain_size}, say(RigDrawingPhrase::notes_capitals), plain_size, true);
  double y = at.y + text_row + 1.0;
  group.add(LineShape{{at.x, y}, {at.x + width, y}, solid(0.5), {}});
  y += 1.5;
  for (std::size_t i = 0; i < notes.size(); ++i) {
    write(group, {at.x, y + 0.9 * plain_size}, std::to_string(i + 1), plain_size, true);
    double base = y + 0.9 * plain_size;
    const auto lines = cell_lines(notes[i], width - number_column);
    for (const std::string& line : lines) {
      write(group, {at.x + number_column, base}, line, plain_size);
      base += text_row;
    }
    y += row_height(lines.size());
  }
  into.add(std::move(group));
  return y;
}

} // namespace sheerpole::rig_drawing
