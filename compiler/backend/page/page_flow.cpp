#include "backend/page/page_flow.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/page/foot.hpp"
#include "base/code_point.hpp"
#include "wording/papers/papers_words.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <memory>
#include <numeric>
#include <utility>

namespace sheerpole {

namespace {

/// Of a box to tick, in ems of the text beside it.
constexpr double tick_box = 1.1;
constexpr double cell_padding = 1.2;

ShapeStyle outline(double width) {
  return {.stroke_width = width, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
}

/// Lines that are set no wider than `width`. wrap_label() leaves room for a wide face beside a drawing; a
/// page names its face, and a text keeps to its set width in any other.
std::vector<std::string> wrap_to(std::string_view text, double size, double width, bool bold) {
  return wrap_label(text, size, width * wide_face_allowance, bold);
}

void add_tick_box(ShapeGroup& group, double left, double base_line, double size) {
  const double side = size * tick_box;
  group.add(RectangleShape{
      {left, base_line - side * 0.8, left + side, base_line + side * 0.2}, outline(0.35), ""});
}

/// The part of a convex outline where `side` is not below nothing; `side` is linear along a line.
template <class Side>
std::vector<PaperPoint> cut_off(const std::vector<PaperPoint>& points, const Side& side) {
  std::vector<PaperPoint> kept;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const PaperPoint& a = points[i];
    const PaperPoint& b = points[(i + 1) % points.size()];
    const double of_a = side(a);
    const double of_b = side(b);
    if (of_a >= 0.0)
      kept.push_back(a);
    if ((of_a < 0.0) != (of_b < 0.0)) {
      const double share = of_a / (of_a - of_b);
      kept.push_back({a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)});
    }
  }
  return kept;
}

/// Stripes across a band of the border, which run on round its corners.
void hatch(const PaperBox& band, ShapeGroup& into) {
  constexpr double apart = 6.4;
  constexpr double wide = 3.2;
  const ShapeStyle black{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0};
  for (double from = std::floor((band.left + band.top) / apart) * apart; from < band.right + band.bottom;
       from += apart) {
    std::vector<PaperPoint> stripe{
        {band.left, band.top}, {band.right, band.top}, {band.right, band.bottom}, {band.left, band.bottom}};
    stripe = cut_off(stripe, [&](PaperPoint at) { return at.x + at.y - from; });
    stripe = cut_off(stripe, [&](PaperPoint at) { return from + wide - at.x - at.y; });
    if (stripe.size() > 2)
      into.add(PolygonShape{std::move(stripe), black, ""});
  }
}

/// Nothing on the sheet may be cut to.
void add_hatched_border(PaperExtent paper, ShapeGroup& into) {
  constexpr double outer = 5.0;
  constexpr double inner = 10.0;
  hatch({outer, outer, paper.width - outer, inner}, into);
  hatch({outer, paper.height - inner, paper.width - outer, paper.height - outer}, into);
  hatch({outer, inner, inner, paper.height - inner}, into);
  hatch({paper.width - inner, inner, paper.width - outer, paper.height - inner}, into);
  for (const double at : {outer, inner})
    into.add(RectangleShape{{at, at, paper.width - at, paper.height - at}, outline(0.35), ""});
}

} // namespace

PageFlow::PageFlow(PaperSize size, PageFrame frame) : paper_(paper_of(size)), frame_(std::move(frame)) {
  foot_ = foot_lines(frame_.name + (frame_.about.empty() ? "" : ", " + frame_.about), width());
  begin_page();
}

double PageFlow::bottom() const {
  return paper_.height - page_margin - foot_height(foot_.size()) - 3.0;
}

void PageFlow::begin_page() {
  page_ = {};
  page_.width = paper_.width;
  page_.height = paper_.height;
  y_ = page_margin;
  page_top_ = y_;
  fresh_ = true;
  if (frame_.hatched)
    add_hatched_border(paper_, page_.content);
  if (frame_.draft.empty())
    return;
  std::string words = say(PapersPhrase::draft_do_not_cut_to);
  for (const std::string& reason : frame_.draft)
    words += " " + reason + (reason.ends_with('.') ? "" : ".");
  notice(words, {.size = 4.2, .bold = true, .indent = 0.0});
  if (!done_.empty())
    reflow_.blocks.pop_back(); // it stands on each page, and once where there are none
  page_top_ = y_;
  fresh_ = true;
}

void PageFlow::note(ReflowText::Kind kind, std::string_view text, const TextLook& look) {
  reflow_.blocks.emplace_back(ReflowText{kind, std::string(text), look.bold});
}

void PageFlow::new_page() {
  done_.push_back(std::move(page_));
  begin_page();
}

void PageFlow::room_for(double millimetres) {
  if (y_ + millimetres > bottom() && !fresh_)
    new_page();
  fresh_ = false;
}

void PageFlow::tag(const char* name, std::size_t since) {
  std::vector<DrawnNode>& all = page_.content.children;
  if (since >= all.size())
    return;
  ShapeGroup group;
  group.tag = name;
  const auto from = all.begin() + static_cast<std::ptrdiff_t>(since);
  group.children.assign(std::make_move_iterator(from), std::make_move_iterator(all.end()));
  all.erase(from, all.end());
  page_.content.add(std::move(group));
}

void PageFlow::tag_table(std::size_t since) {
  std::vector<DrawnNode>& all = page_.content.children;
  const auto rules = std::stable_partition(
      all.begin() + static_cast<std::ptrdiff_t>(since), all.end(),
      [](const DrawnNode& node) { return !std::holds_alternative<ShapeGroup>(node.content()); });
  tag("Table", static_cast<std::size_t>(rules - all.begin()));
}

void PageFlow::lines(const std::vector<std::string>& lines, double left, TextLook look, const char* name) {
  const double step = look.size * line_spacing;
  std::size_t since = drawn();
  for (const std::string& line : lines) {
    if (y_ + step > bottom() && !fresh_) {
      tag(name, since);
      new_page();
      since = drawn();
    }
    fresh_ = false;
    page_.content.add(TextShape{{left, y_ + look.size}, line, look.size, TextAnchor::start, look.bold, ""});
    y_ += step;
  }
  tag(name, since);
}

void PageFlow::heading(std::string_view text, double size, double kept_below, std::string id) {
  const auto broken = wrap_to(text, size, width(), true);
  room_for(size * line_spacing * static_cast<double>(broken.size()) + kept_below);
  if (y_ > page_margin + 1.0)
    y_ += size * 0.5;
  constexpr double of_section = 4.6; // smaller ones are below it
  lines(broken, page_margin, {.size = size, .bold = true, .indent = 0.0}, size < of_section ? "H3" : "H2");
  if (!id.empty())
    std::get<ShapeGroup>(page_.content.children.back().content()).id = std::move(id);
  y_ += size * 0.25;
  note(ReflowText::Kind::heading, text, {.size = size, .bold = true});
}

void PageFlow::text(std::string_view text, TextLook look) {
  constexpr double of_title = 6.0;
  lines(wrap_to(text, look.size, width() - look.indent, look.bold), page_margin + look.indent, look,
        look.bold && look.size >= of_title ? "H1" : "P");
  note(ReflowText::Kind::text, text, look);
}

void PageFlow::tick(std::string_view text, TextLook look) {
  const double side = look.size * (tick_box + 0.6);
  const auto broken = wrap_to(text, look.size, width() - look.indent - side, look.bold);
  room_for(look.size * line_spacing * static_cast<double>(broken.size()) + 1.0);
  add_tick_box(page_.content, page_margin + look.indent, y_ + look.size, look.size);
  lines(broken, page_margin + look.indent + side, look);
  y_ += look.size * 0.35;
  note(ReflowText::Kind::tick, text, look);
}

void PageFlow::to_write(std::string_view words, TextLook look) {
  const double height = look.size * 2.2;
  room_for(height);
  const TextShape shape{{page_margin + look.indent, y_ + height - look.size * 0.4},
                        std::string(words),
                        look.size,
                        TextAnchor::start,
                        look.bold,
                        ""};
  const std::size_t since = drawn();
  page_.content.add(shape);
  tag("P", since);
  const double from = words.empty() ? page_margin + look.indent : label_box(shape).right + look.size * 0.4;
  const double base = y_ + height - look.size * 0.2;
  if (from < paper_.width - page_margin)
    page_.content.add(LineShape{{from, base}, {paper_.width - page_margin, base}, outline(0.2), ""});
  y_ += height;
  note(ReflowText::Kind::to_write, words, look);
}

void PageFlow::notice(std::string_view text, TextLook look) {
  const double padding = look.size * 0.6;
  const auto broken = wrap_to(text, look.size, width() - 2.0 * padding, look.bold);
  const double height =
      look.size * line_spacing * static_cast<double>(broken.size()) + 2.0 * padding - look.size * 0.25;
  const double above = y_ > page_margin + 1.0 ? look.size * 0.3 : 0.0;
  room_for(height + above);
  if (y_ > page_margin + 1.0)
    y_ += above;
  page_.content.add(
      RectangleShape{{page_margin, y_, paper_.width - page_margin, y_ + height}, outline(0.9), ""});
  const double end = y_ + height;
  y_ += padding * 0.8;
  lines(broken, page_margin + padding, look);
  y_ = end + look.size * 0.6;
  note(ReflowText::Kind::notice, text, look);
}

void PageFlow::fixed(std::string_view line, double size, bool begins) {
  const double step = size * line_spacing;
  room_for(step);
  const std::size_t since = drawn();
  // Viewers draw a row of blanks as one, so each run of words stands at a place of its own.
  std::size_t column = 0;
  while (!line.empty()) {
    const std::size_t words = line.find_first_not_of(' ');
    if (words == std::string_view::npos)
      break;
    column += words;
    line.remove_prefix(words);
    const std::string_view run = line.substr(0, line.find("  "));
    page_.content.add(
        TextShape{.at = {page_margin + fixed_pitch_in_ems * size * static_cast<double>(column), y_ + size},
                  .text = std::string(run),
                  .size = size,
                  .anchor = TextAnchor::start,
                  .bold = false,
                  .id = "",
                  .fixed_pitch = true});
    column += screen_columns(run);
    line.remove_prefix(run.size());
  }
  tag(begins ? "H2" : "P", since);
  y_ += step;
}

double PageFlow::column_width(const FlowTable& table, std::size_t column) const {
  const double all = std::accumulate(table.columns.begin(), table.columns.end(), 0.0,
                                     [](double sum, const FlowColumn& one) { return sum + one.share; });
  return width() * table.columns[column].share / all;
}

double PageFlow::padding_before(const FlowTable& table, std::size_t column) {
  return column == 0 ? cell_padding : table.gutter / 2.0;
}

double PageFlow::padding_behind(const FlowTable& table, std::size_t column) {
  return column + 1 == table.columns.size() ? cell_padding : table.gutter / 2.0;
}

PageFlow::SetRow PageFlow::set_row(const FlowTable& table, const std::vector<FlowCell>& row) const {
  SetRow set{.cells = &row, .lines = {}, .height = 0.0};
  for (std::size_t i = 0; i < row.size(); ++i) {
    const double box = row[i].tick ? table.size * (tick_box + 0.5) : 0.0;
    set.lines.push_back(wrap_to(
        row[i].text, table.size,
        column_width(table, i) - padding_before(table, i) - padding_behind(table, i) - box, row[i].bold));
  }
  set.measure(table.size);
  return set;
}

void PageFlow::SetRow::measure(double size) {
  std::size_t most = 1;
  for (const std::vector<std::string>& cell : lines)
    most = std::max(most, cell.size());
  height = size * line_spacing * static_cast<double>(most) + 2.0 * cell_padding;
}

void PageFlow::draw_cell(const FlowTable& table, const SetRow& row, std::size_t column, double left) {
  const FlowCell& cell = (*row.cells)[column];
  const double right = left + column_width(table, column) - padding_behind(table, column);
  double text_left = left + padding_before(table, column);
  double base = y_ + cell_padding + table.size * 0.95;
  const double foot = y_ + row.height - cell_padding;
  if (cell.rule)
    page_.content.add(LineShape{{text_left, foot}, {right, foot}, outline(0.2), ""});
  if (cell.tick) {
    add_tick_box(page_.content, text_left, base, table.size);
    text_left += table.size * (tick_box + 0.5);
  }
  const bool to_right = table.columns[column].right;
  for (const std::string& line : row.lines[column]) {
    if (!line.empty()) {
      TextShape text{{to_right ? right : text_left, base},           line,      table.size,
                     to_right ? TextAnchor::end : TextAnchor::start, cell.bold, ""};
      if (cell.link.empty()) {
        page_.content.add(std::move(text));
      } else {
        ShapeGroup leads;
        leads.link = cell.link;
        leads.add(std::move(text));
        page_.content.add(std::move(leads));
      }
    }
    base += table.size * line_spacing;
  }
}

void PageFlow::draw_row(const FlowTable& table, const SetRow& row, bool heading) {
  double left = page_margin;
  const std::size_t since = drawn();
  for (std::size_t i = 0; i < row.lines.size(); ++i) {
    const std::size_t cell = drawn();
    draw_cell(table, row, i, left);
    const char* name = heading ? "TH" : "TD";
    if (drawn() > cell) {
      tag(name, cell);
    } else { // an empty one is a cell all the same
      ShapeGroup empty;
      empty.tag = name;
      page_.content.add(std::move(empty));
    }
    left += column_width(table, i);
  }
  tag("TR", since);
  y_ += row.height;
  page_.content.add(
      LineShape{{page_margin, y_}, {paper_.width - page_margin, y_}, outline(heading ? 0.5 : 0.15), ""});
}

std::vector<FlowCell> PageFlow::headings_of(const FlowTable& table) {
  std::vector<FlowCell> headings;
  bool any = false;
  for (const FlowColumn& column : table.columns) {
    headings.push_back({.text = column.heading, .bold = true});
    any = any || !column.heading.empty();
  }
  return any ? headings : std::vector<FlowCell>{};
}

double PageFlow::head_height(const FlowTable& table) const {
  const std::vector<FlowCell> headings = headings_of(table);
  return (headings.empty() ? 0.0 : set_row(table, headings).height) +
         (table.rows.empty() ? 0.0 : set_row(table, table.rows.front()).height);
}

void PageFlow::table(const FlowTable& table) {
  reflow_.blocks.emplace_back(table);
  const std::vector<FlowCell> headings = headings_of(table);
  const SetRow head = set_row(table, headings);
  const double head_height = headings.empty() ? 0.0 : head.height;
  // What one page takes below the headings; a row that is higher goes on over several.
  const double most = bottom() - page_top_ - head_height;
  const auto most_lines =
      static_cast<std::size_t>(std::max(1.0, (most - 2.0 * cell_padding) / (table.size * line_spacing)));
  bool begun = false;
  std::size_t since = drawn();
  for (const std::vector<FlowCell>& cells : table.rows) {
    SetRow row = set_row(table, cells);
    while (true) {
      SetRow rest{.cells = row.cells, .lines = {}, .height = 0.0};
      bool more = false;
      if (row.height > most)
        for (std::vector<std::string>& lines : row.lines) {
          const std::size_t kept = std::min(lines.size(), most_lines);
          rest.lines.emplace_back(lines.begin() + static_cast<std::ptrdiff_t>(kept), lines.end());
          lines.resize(kept);
          more = more || !rest.lines.back().empty();
        }
      row.measure(table.size);
      if (!begun) {
        room_for(head_height + row.height);
        since = drawn();
        if (!headings.empty())
          draw_row(table, head, true);
        begun = true;
      } else if (y_ + row.height > bottom()) {
        tag_table(since);
        new_page();
        since = drawn();
        fresh_ = false;
        if (!headings.empty())
          draw_row(table, head, true);
      }
      draw_row(table, row, false);
      if (!more)
        break;
      row = std::move(rest);
      row.measure(table.size);
    }
  }
  if (!begun && !headings.empty()) {
    room_for(head_height);
    since = drawn();
    draw_row(table, head, true);
  }
  if (begun || !headings.empty())
    tag_table(since);
  y_ += table.size * 0.5;
}

void PageFlow::space(double millimetres) {
  if (y_ + millimetres <= bottom())
    y_ += millimetres;
}

void PageFlow::rule() {
  reflow_.blocks.emplace_back(ReflowRule{});
  room_for(2.0);
  page_.content.add(
      LineShape{{page_margin, y_ + 1.0}, {paper_.width - page_margin, y_ + 1.0}, outline(0.25), ""});
  y_ += 2.0;
}

std::vector<Drawing> PageFlow::pages(const std::string& title, const std::string& description) {
  done_.push_back(std::move(page_));
  for (std::size_t i = 0; i < done_.size(); ++i) {
    Drawing& page = done_[i];
    add_foot(foot_, page_margin, page);
    page.title = title + (done_.size() > 1 ? say(PapersPhrase::page_of_behind, i + 1, done_.size()) : "");
    page.description = description;
  }
  number_pages(done_);
  reflow_.foot = frame_.name + (frame_.about.empty() ? "" : ", " + frame_.about);
  done_.front().reflow = std::make_shared<const Reflow>(std::move(reflow_));
  return std::move(done_);
}

} // namespace sheerpole
