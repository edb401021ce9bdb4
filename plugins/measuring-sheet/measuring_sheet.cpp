#include "plugins/measuring-sheet/measuring_sheet.hpp"

#include "backend/card/card_piece.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/page/paper_files.hpp"
#include "backend/table/table.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/measuring_sheet_words.hpp"

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
  const ShapeStyle plate{.stroke_width = 0.35, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
  const double y = at.y + 8.0;
  const double left = at.x + 4.0;
  const double right = at.x + width - 4.0;
  const double middle = (left + right) / 2.0;
  write(into, {at.x, at.y + 3.2}, say(MeasuringSheetPhrase::aloft), 3.2, true);
  write(into, {at.x + width, at.y + 3.2}, say(MeasuringSheetPhrase::below), 3.2, true, TextAnchor::end);
  write(into, {middle, at.y + 3.2}, measured_between(rig, stay), 2.8, false, TextAnchor::middle);
  into.add(LineShape{{left, y}, {right, y}, heavy, {}});
  for (const WhichEnd where : {WhichEnd::upper, WhichEnd::lower}) {
    const double x = where == WhichEnd::upper ? left : right;
    if (ends_in_plate(rig, stay, where)) { // its middle is what the line is drawn to, and no hole of it
      const std::array<PaperPoint, 3> corners{{{x - 3.4, y}, {x + 2.6, y - 3.4}, {x + 2.6, y + 3.4}}};
      for (std::size_t i = 0; i < corners.size(); ++i)
        into.add(LineShape{corners[i], corners[(i + 1) % corners.size()], plate, {}});
    } else
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
    write(into, {middle, y + 5.6}, say(MeasuringSheetPhrase::over, tips), 2.8, false, TextAnchor::middle);
}

FlowCell asked(const std::string& text) {
  return {.text = text};
}

/// What is filled in, two blanks a row.
FlowTable blanks(const Rig& rig, const Stay& stay) {
  const bool rope = rig[stay.material].kind == LineMaterial::Kind::rope;
  FlowTable table{
      .columns = {{"", 1.8}, {"", 1.5}, {"", 1.8}, {"", 1.5}}, .size = 3.0, .gutter = card_gutter};
  const auto row = [&](PhraseText first, PhraseText second) {
    table.rows.push_back({asked(first), cell_to_write, asked(second), cell_to_write});
  };
  row(say(MeasuringSheetPhrase::length_first), say(MeasuringSheetPhrase::length_second));
  row(say(MeasuringSheetPhrase::by_tape_cord_laser_or), say(MeasuringSheetPhrase::pull_on_it));
  row(say(MeasuringSheetPhrase::temperature), ends_in_plate(rig, stay, WhichEnd::upper)
                                                  ? say(MeasuringSheetPhrase::hook_or_cord_end_to_plate)
                                                  : say(MeasuringSheetPhrase::hook_or_cord_end_to));
  row(say(MeasuringSheetPhrase::hoisted_lower_than_pin_by),
      ends_in_plate(rig, stay, WhichEnd::lower) ? say(MeasuringSheetPhrase::knot_to_plate_below)
                                                : say(MeasuringSheetPhrase::knot_to_pin_below));
  row(say(MeasuringSheetPhrase::cord_its_colour), say(MeasuringSheetPhrase::little_knots_in_its_tail));
  row(say(MeasuringSheetPhrase::adjuster_stands_at), rope ? say(MeasuringSheetPhrase::lashing_gap_passes)
                                                          : say(MeasuringSheetPhrase::turns_still_to_take));
  return table;
}

/// "masthead, tang-12 (Tang 12 mm)". A stay without a path has no places, and its end is aloft or below as
/// the line already says.
std::string place_and_part(const Rig& rig, const Stay& stay, WhichEnd where) {
  const std::string part = part_at(rig, stay, where);
  if (stay.path.size() < 2 && !part.empty())
    return part;
  return where_words(rig, stay, where) + led_by(", ", part);
}

void add_stay(const Rig& rig, const Stay& stay, PageFlow& page) {
  page.room_for(82.0);
  page.heading(stay.base + led_by(" ", stay.side == Side::centre ? "" : side_words(stay.side)) +
                   led_by(": ", stay.title),
               4.2, 70.0);
  page.drawing(15.0,
               [&](ShapeGroup& into, PaperPoint at) { draw_stay(rig, stay, page.width(), at, into); });
  for (const WhichEnd where : {WhichEnd::upper, WhichEnd::lower})
    page.text(
        fmt::format("{}: {}{}.",
                    where == WhichEnd::upper ? say(MeasuringSheetPhrase::aloft_begins)
                                             : say(MeasuringSheetPhrase::below_begins),
                    place_and_part(rig, stay, where),
                    ends_in_plate(rig, stay, where) ? say(MeasuringSheetPhrase::not_to_its_hole) : ""),
        small);
  page.table(blanks(rig, stay));
  page.to_write(say(MeasuringSheetPhrase::pin_aloft_and_what_secures), small);
  page.tick(say(MeasuringSheetPhrase::seen_aloft_no_crack_no), small);
  page.space(1.0);
}

void add_head(const std::string& boat, const CardUnit& unit, PageFlow& page) {
  page.text(say(MeasuringSheetPhrase::measuring_sheet, boat), {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(say(MeasuringSheetPhrase::measure_each_stay_twice_from), plain);
  page.text(say(MeasuringSheetPhrase::tape_pull_it_as_hard), plain);
  page.text(say(MeasuringSheetPhrase::fill_in_measuring_sheet_csv), small);
  if (!unit.shop.empty())
    page.text(say(MeasuringSheetPhrase::cards_are_in, unit_words(unit)), small);
  page.notice(say(MeasuringSheetPhrase::going_aloft_and_loaded_rigging),
              {.size = 3.2, .bold = true, .indent = 0.0});
  page.to_write(say(MeasuringSheetPhrase::day_by), plain);
  page.to_write(say(MeasuringSheetPhrase::afloat_or_ashore_wind_temperature), plain);
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
  PageFlow page(size, {.name = say(MeasuringSheetPhrase::measuring_sheet_begins),
                       .about = identity_words(checked),
                       .draft = {}});
  add_head(boat, card_unit(rig), page);
  for (const Stay& stay : rig.stays)
    add_stay(rig, stay, page);
  if (rig.stays.empty())
    page.text(say(MeasuringSheetPhrase::rig_file_states_no_stay));
  return page.pages(say(MeasuringSheetPhrase::measuring_sheet_of, boat),
                    say(MeasuringSheetPhrase::blanks_for_two_readings_each));
}

BackendDescription MeasuringSheet::describe() const {
  return {.name = "measuring-sheet",
          .summary = say(MeasuringSheetPhrase::blank_form_for_measuring_where),
          .outputs = {"measuring-sheet.html", "measuring-sheet.csv"},
          .papers = {"measuring-sheet.pdf"}};
}

OutputBundle MeasuringSheet::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  OutputBundle bundle;
  add_pages("measuring-sheet", say(MeasuringSheetPhrase::measuring_sheet_of, boat),
            measuring_pages(request.checked, boat, request.paper), bundle);
  bundle.files.push_back({"measuring-sheet.csv", measuring_table(request.checked.rig())});
  return bundle;
}

} // namespace sheerpole
