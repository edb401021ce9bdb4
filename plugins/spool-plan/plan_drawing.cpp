#include "plugins/spool-plan/spool_plan_backend.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "backend/page/foot.hpp"
#include "plugins/spool-plan/stock_bar.hpp"
#include "wording/papers/spool_plan_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>

namespace sheerpole {

namespace {

constexpr double margin = 10.0;
constexpr double block_gap = 5.0;

/// Something that is not parted between two sheets: draws itself below y and returns the y below it.
using Block = std::function<double(double y, ShapeGroup& into)>;

/// A length of metres that makes a bar of 40 to 100 mm.
double scale_bar_metres(double scale) {
  double metres = 0.001;
  for (const double step : {0.002, 0.005, 0.01, 0.02, 0.05,  0.1,   0.2,   0.5,    1.0,    2.0,
                            5.0,   10.0,  20.0, 50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0, 5000.0})
    if (step * 1000.0 * scale <= 100.0)
      metres = step;
  return metres;
}

double draw_scale_bar(double scale, PaperPoint at, ShapeGroup& into) {
  const double metres = scale_bar_metres(scale);
  const double width = metres * 1000.0 * scale;
  ShapeGroup group;
  group.id = "scale-bar";
  group.title = say(SpoolPlanPhrase::scale_bar, format_number(metres));
  const double y = at.y + 2.0;
  group.add(LineShape{{at.x, y}, {at.x + width, y}, {0.5, 0.0, {}, {}}, {}});
  for (const double x : {at.x, at.x + width})
    group.add(LineShape{{x, y - 1.5}, {x, y + 1.5}, {0.25, 0.0, {}, {}}, {}});
  group.add(TextShape{{at.x + width + 2.0, y + 0.9},
                      format_number(metres) + " m = " + format_feet_inches(Length::metres(metres)),
                      plan_text_size,
                      TextAnchor::start,
                      false,
                      {}});
  into.add(std::move(group));
  return y + 2.0;
}

struct Sample {
  BarPattern pattern;
  bool draft;
  PhraseText words;
};

/// What the patterns mean, on one row.
double draw_legend(PaperPoint at, ShapeGroup& into) {
  ShapeGroup group;
  group.id = "legend";
  group.title = say(SpoolPlanPhrase::what_the_patterns_mean);
  double x = at.x;
  for (const Sample& sample : {Sample{BarPattern::plain, false, say(SpoolPlanPhrase::piece)},
                               Sample{BarPattern::plain, true, say(SpoolPlanPhrase::piece_that_is_draft)},
                               Sample{BarPattern::slant, false, say(SpoolPlanPhrase::left_and_kept)},
                               Sample{BarPattern::upright, false, say(SpoolPlanPhrase::kept_back_as_spare)},
                               Sample{BarPattern::crossed, false, say(SpoolPlanPhrase::waste)}}) {
    const PaperBox box{x, at.y, x + 12.0, at.y + 4.5};
    draw_pattern(box, sample.pattern, group);
    if (sample.draft)
      group.add(RectangleShape{{box.left + 0.8, box.top + 0.8, box.right - 0.8, box.bottom - 0.8},
                               {0.2, 0.0, {1.0, 0.8}, {}},
                               {}});
    const TextShape words{
        {box.right + 1.5, at.y + 3.2}, sample.words, plan_text_size, TextAnchor::start, false, {}};
    x = label_box(words).right + 6.0;
    group.add(words);
  }
  group.add(LineShape{{x + 2.0, at.y - 0.5}, {x + 2.0, at.y + 4.5}, {0.3, 0.0, {}, {}}, {}});
  group.add(TextShape{
      {x + 4.0, at.y + 3.2}, say(SpoolPlanPhrase::cut), plan_text_size, TextAnchor::start, false, {}});
  into.add(std::move(group));
  return at.y + 5.0;
}

double draw_head(const FleetBoats& fleet, const SpoolPlan& plan, double scale, std::size_t number,
                 std::size_t of, ShapeGroup& into) {
  double y =
      draw_words(say(SpoolPlanPhrase::spool_plan), {margin, margin}, plan_title_size, bar_room, true, into);
  y = draw_words(fleet.titles, {margin, y}, plan_text_size, bar_room, true, into);
  y = draw_words(say(SpoolPlanPhrase::sheet_each_bar_is_stock, number, of), {margin, y}, plan_text_size,
                 bar_room, false, into);
  if (any_draft(plan))
    y = draw_words(say(SpoolPlanPhrase::draft_some_pieces_rest_on), {margin, y}, plan_text_size, bar_room,
                   true, into);
  if (scale > 0.0) {
    y = draw_legend({margin, y + 1.5}, into);
    y = draw_scale_bar(scale, {margin, y + 1.5}, into);
  }
  return y + 2.0;
}

void add_line(const LinePlan& plan, std::size_t place, double scale, std::vector<Block>& blocks) {
  const LineOrder& line = plan.order;
  std::vector<std::string> words;
  if (plan.searched)
    words.push_back(say(SpoolPlanPhrase::bound, proof_words(plan)));
  if (line.stocks.empty())
    words.emplace_back(say(SpoolPlanPhrase::nothing_it_is_in_stock));
  if (!plan.short_pieces.empty())
    words.push_back(say(SpoolPlanPhrase::to_buy, to_buy_words(plan)));
  if (!line.unplanned.empty())
    words.push_back(say(SpoolPlanPhrase::not_planned_spool_plan_txt,
                        counted(static_cast<std::int64_t>(line.unplanned.size()),
                                say(SpoolPlanPhrase::piece), say(SpoolPlanPhrase::pieces))));
  const auto heading = [&line, words](double y, ShapeGroup& into) {
    y = draw_words(line_words(line), {margin, y}, plan_heading_size, bar_room, true, into);
    y = draw_words(cutting_words(line), {margin, y}, plan_text_size, bar_room, false, into);
    for (const std::string& text : words)
      y = draw_words(text, {margin, y}, plan_text_size, bar_room, false, into);
    return y;
  };
  std::size_t number = 1;
  bool first = true;
  for (const SpoolUse& use : plan.uses) {
    const std::string id =
        fmt::format("line-{}-{}-{}", place + 1, element_id(line.stocks[use.stock].name), use.ordinal);
    // The heading is not parted from the first bar.
    blocks.emplace_back([&line, &use, heading, number, scale, id, first](double y, ShapeGroup& into) {
      if (first)
        y = heading(y, into) + 1.5;
      return draw_bar(line, use, number, scale, {margin, y}, id, into);
    });
    number += use.cuts.size();
    first = false;
  }
  if (first)
    blocks.emplace_back(heading);
}

} // namespace

std::vector<Drawing> plan_drawing(const FleetBoats& fleet, const SpoolPlan& plan) {
  const double scale = plan_scale(plan);
  std::vector<Block> blocks;
  for (std::size_t i = 0; i < plan.lines.size(); ++i)
    if (!plan.lines[i].order.pieces.empty() || !plan.lines[i].order.unplanned.empty())
      add_line(plan.lines[i], i, scale, blocks);
  if (blocks.empty())
    blocks.emplace_back([](double y, ShapeGroup& into) {
      return draw_words(say(SpoolPlanPhrase::there_is_nothing_to_cut), {margin, y}, plan_text_size,
                        bar_room, false, into);
    });

  const Drawing usual; // A3 landscape
  ShapeGroup measured;
  const double top = draw_head(fleet, plan, scale, 99, 99, measured);
  const double bottom = usual.height - margin - sheet_foot_height;
  std::vector<std::vector<const Block*>> sheets(1);
  double y = top;
  for (const Block& block : blocks) {
    const double height = block(0.0, measured);
    if (y > top && y + height > bottom) {
      sheets.emplace_back();
      y = top;
    }
    y += height + block_gap;
    sheets.back().push_back(&block);
  }

  std::vector<Drawing> drawings;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    Drawing drawing;
    drawing.title = say(SpoolPlanPhrase::spool_plan_for_sheet, fleet.titles, i + 1, sheets.size());
    drawing.description = say(SpoolPlanPhrase::each_spool_coil_or_offcut);
    drawing.content.id = "sheet";
    y = draw_head(fleet, plan, scale, i + 1, sheets.size(), drawing.content);
    for (const Block* block : sheets[i])
      y = (*block)(y, drawing.content) + block_gap;
    // A block higher than the sheet stands alone on it, and the sheet grows.
    drawing.height = std::max(drawing.height, y - block_gap + sheet_foot_height + margin);
    draw_sheet_foot(say(SpoolPlanPhrase::spool_plan), fleet.identity, fleet.edition,
                    say(SpoolPlanPhrase::sheerpole_reports_what_rig_files), drawing);
    drawings.push_back(std::move(drawing));
  }
  number_pages(drawings);
  return drawings;
}

} // namespace sheerpole
