#include "plugins/measuring-sheet/measuring_sheet.hpp"

#include "backend/card/card_piece.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/page/paper_files.hpp"
#include "backend/table/table.hpp"
#include "wording/model_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace sheerpole {

namespace {

constexpr TextLook plain{.size = 3.2, .bold = false, .indent = 0.0};
constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};

/// The headings of the table in the order of the work.
constexpr std::array headings{"stay",       "side",  "title", "method",      "length", "second-length",
                              "cord",       "knots", "pull",  "temperature", "offset", "hoist-offset",
                              "below-knot", "date",  "by",    "note"};

void write(ShapeGroup& into, PaperPoint at, const std::string& text, double size, bool bold,
           TextAnchor anchor = TextAnchor::start) {
  into.add(TextShape{at, text, size, anchor, bold, {}});
}

/// What bears there: the part at the end of the stack, where the stack states one.
std::string part_at(const Rig& rig, const Stay& stay, WhichEnd where) {
  if (stay.stack.empty())
    return {};
  const StackItem& item = where == WhichEnd::upper ? stay.stack.front() : stay.stack.back();
  return item.kind == StackItem::Kind::part ? shown(rig[item.part].name, rig[item.part].title)
                                            : std::string();
}

/// The stay as a line between its two pins, with the tips that it passes. Not to scale.
void draw_stay(const Rig& rig, const Stay& stay, double width, PaperPoint at, ShapeGroup& into) {
  const ShapeStyle heavy{.stroke_width = 0.7, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
  const ShapeStyle thin{.stroke_width = 0.25, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
  const ShapeStyle pin{.stroke_width = 0.35, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 1.0};
  const double y = at.y + 8.0;
  const double left = at.x + 4.0;
  const double right = at.x + width - 4.0;
  const double middle = (left + right) / 2.0;
  write(into, {at.x, at.y + 3.2}, "ALOFT", 3.2, true);
  write(into, {at.x + width, at.y + 3.2}, "BELOW", 3.2, true, TextAnchor::end);
  write(into, {middle, at.y + 3.2}, "from the middle of one pin to the middle of the other", 2.8, false,
        TextAnchor::middle);
  into.add(LineShape{{left, y}, {right, y}, heavy, {}});
  for (const double x : {left, right}) {
    into.add(CircleShape{{x, y}, 1.6, pin, {}});
    into.add(LineShape{{x, y - 2.6}, {x, y + 2.6}, thin, {}});
  }
  std::string tips;
  const std::size_t count = stay.path.size();
  for (std::size_t i = 1; i + 1 < count; ++i) {
    const double x = left + (right - left) * static_cast<double>(i) / static_cast<double>(count - 1);
    into.add(LineShape{{x - 1.6, y + 2.2}, {x, y + 0.35}, thin, {}});
    into.add(LineShape{{x + 1.6, y + 2.2}, {x, y + 0.35}, thin, {}});
    add_words(tips, ", ", rig[stay.path[i].point].base);
  }
  if (!tips.empty())
    write(into, {middle, y + 5.6}, "over " + tips, 2.8, false, TextAnchor::middle);
}

FlowCell asked(const std::string& text) {
  return {.text = text};
}

/// What is filled in, two blanks a row.
FlowTable blanks(bool rope) {
  FlowTable table{
      .columns = {{"", 1.8}, {"", 1.5}, {"", 1.8}, {"", 1.5}}, .size = 3.0, .gutter = card_gutter};
  const auto row = [&](const char* first, const char* second) {
    table.rows.push_back({asked(first), cell_to_write, asked(second), cell_to_write});
  };
  row("length, first", "length, second");
  row("by tape, cord, laser or old stay", "pull on it");
  row("temperature", "hook or cord end to pin aloft");
  row("hoisted lower than the pin by", "knot to pin below");
  row("cord, its colour", "little knots in its tail");
  row("adjuster stands at", rope ? "lashing: gap, passes" : "turns still to take");
  return table;
}

bool ends_in_rope(const Rig& rig, const Stay& stay) {
  return rig[stay.material].kind == LineMaterial::Kind::rope;
}

void add_stay(const Rig& rig, const Stay& stay, PageFlow& page) {
  page.room_for(78.0);
  page.heading(stay.base + led_by(" ", stay.side == Side::centre ? "" : side_words(stay.side)) +
                   led_by(": ", stay.title),
               4.2, 70.0);
  page.drawing(17.0,
               [&](ShapeGroup& into, PaperPoint at) { draw_stay(rig, stay, page.width(), at, into); });
  for (const WhichEnd where : {WhichEnd::upper, WhichEnd::lower})
    page.text(fmt::format("{}: {}{}.", where == WhichEnd::upper ? "Aloft" : "Below",
                          where_words(rig, stay, where), led_by(", ", part_at(rig, stay, where))),
              small);
  page.table(blanks(ends_in_rope(rig, stay)));
  page.to_write("Pin aloft and what secures it:", small);
  page.tick("Seen aloft: no crack, no worn hole, no broken wire or strand.", small);
  page.space(2.0);
}

void add_head(const std::string& boat, const CardUnit& unit, PageFlow& page) {
  page.text("MEASURING SHEET   " + boat, {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(
      "Measure each stay twice, from the middle of the pin aloft to the middle of the pin below, with its "
      "adjuster where it sails. Write the unit behind every number; mm, or feet and inches.",
      plain);
  page.text("Tape: pull it as hard each time, and write how hard. Cord: hoist it as hard, knot it at the "
            "pin, keep the "
            "cord; it is the length. Two readings more than 5 mm apart: take both again.",
            plain);
  page.text("Fill in measuring-sheet.csv with the same words, and `sheerpole enter BOAT.rig --from "
            "measuring-sheet.csv` "
            "puts the readings into the rig file.",
            small);
  if (!unit.shop.empty())
    page.text("Cards are in " + unit_words(unit) + ".", small);
  page.notice(
      "Going aloft and loaded rigging can kill. A second line and somebody at the winch; hold the mast by "
      "something else before a stay is let go, one stay at a time.",
      {.size = 3.2, .bold = true, .indent = 0.0});
  page.to_write("Day, by:", plain);
  page.to_write("Afloat or ashore, wind, temperature:", plain);
}

} // namespace

std::string measuring_table(const Rig& rig) {
  Table table;
  for (const char* heading : headings)
    table.columns.push_back({heading});
  for (const Stay& stay : rig.stays) {
    std::vector<std::string> row{
        stay.base, stay.side == Side::centre ? "" : std::string(name_of(stay.side)), stay.title};
    row.resize(headings.size());
    table.rows.push_back(std::move(row));
  }
  return render_csv(table);
}

std::vector<Drawing> measuring_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  const Rig& rig = checked.rig();
  PageFlow page(size, {.name = "Measuring sheet", .about = identity_words(checked), .draft = {}});
  add_head(boat, card_unit(rig), page);
  for (const Stay& stay : rig.stays)
    add_stay(rig, stay, page);
  if (rig.stays.empty())
    page.text("The rig file states no stay.");
  return page.pages("Measuring sheet of " + boat,
                    "Blanks for two readings of each stay, and where its pins are.");
}

BackendDescription MeasuringSheet::describe() const {
  return {.name = "measuring-sheet",
          .summary = "a blank form for measuring: where the pins are, two readings of each stay, and a "
                     "table to fill in",
          .outputs = {"measuring-sheet.html", "measuring-sheet.csv"},
          .papers = {"measuring-sheet.pdf"}};
}

OutputBundle MeasuringSheet::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  OutputBundle bundle;
  add_pages("measuring-sheet", "Measuring sheet of " + boat,
            measuring_pages(request.checked, boat, request.paper), bundle);
  bundle.files.push_back({"measuring-sheet.csv", measuring_table(request.checked.rig())});
  return bundle;
}

} // namespace sheerpole
