#include "plugins/spool-plan/stock_bar.hpp"

#include "backend/drawing/label_text.hpp"
#include "plugins/spool-plan/spool_plan_backend.hpp"
#include "wording/papers/spool_plan_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

const ShapeStyle thin{0.15, 0.0, {}, {}};

/// Lines at 45 degrees; `rising` ones run up to the right.
void slanted(const PaperBox& box, double apart, bool rising, ShapeGroup& into) {
  const double height = box.height();
  for (double x = box.left - height + apart / 2; x < box.right; x += apart) {
    // From (x, bottom) up to (x + height, top), cut off at the sides of the box.
    const double from = std::max(x, box.left);
    const double to = std::min(x + height, box.right);
    if (to - from < 0.05)
      continue;
    const double low = box.bottom - (from - x);
    const double high = box.bottom - (to - x);
    if (rising)
      into.add(LineShape{{from, low}, {to, high}, thin, {}});
    else
      into.add(LineShape{{from, box.top + box.bottom - low}, {to, box.top + box.bottom - high}, thin, {}});
  }
}

constexpr double bar_height = 7.0;
constexpr double broken_rest = 50.0; ///< width of a rest that is drawn broken off
constexpr double break_gap = 3.0;
constexpr double leader_height = 3.0;
constexpr std::size_t list_columns = 3;
constexpr double column_gap = 4.0;

double taken_mm(const SpoolUse& use) {
  return static_cast<double>(use.pieces_mm + use.kerf_mm);
}

struct NumberLabel {
  std::string text;
  double middle;
};

double label_width(const std::string& text, double size) {
  return label_box(TextShape{{0, 0}, text, size, TextAnchor::middle, false, {}}).width();
}

void draw_number(const NumberLabel& label, double base, double size, ShapeGroup& into) {
  into.add(TextShape{{label.middle, base}, label.text, size, TextAnchor::middle, false, {}});
}

/// The numbers of the pieces that are too short for them stand below, each on a leader. Returns the y below
/// them.
double draw_leaders(const std::vector<NumberLabel>& labels, double left, double bottom, ShapeGroup& into) {
  if (labels.empty())
    return bottom;
  std::vector<double> wanted;
  std::vector<double> widths;
  double all = 0.0;
  for (const NumberLabel& label : labels) {
    const double width = label_width(label.text, plan_small_size) + 0.8;
    wanted.push_back(label.middle);
    widths.push_back(width);
    all += width;
  }
  if (all > bar_room)
    return draw_words(say(SpoolPlanPhrase::numbers_short_pieces_have_no), {left, bottom + 1.0},
                      plan_small_size, bar_room, false, into);
  const std::vector<double> middles = spread_apart(wanted, widths, left, left + bar_room);
  for (std::size_t i = 0; i < labels.size(); ++i) {
    into.add(LineShape{
        {labels[i].middle, bottom}, {middles[i], bottom + leader_height}, {0.13, 0.0, {}, {}}, {}});
    draw_number({labels[i].text, middles[i]}, bottom + leader_height + 0.95 * plan_small_size,
                plan_small_size, into);
  }
  return bottom + leader_height + line_spacing * plan_small_size;
}

void draw_break(double x, double top, ShapeGroup& into) {
  for (const double shift : {0.0, break_gap}) {
    const double at = x + shift;
    into.add(PolylineShape{{{at, top - 1.0},
                            {at, top + 0.35 * bar_height},
                            {at - 1.0, top + 0.45 * bar_height},
                            {at + 1.0, top + 0.55 * bar_height},
                            {at, top + 0.65 * bar_height},
                            {at, top + bar_height + 1.0}},
                           {0.25, 0.0, {}, {}},
                           {}});
  }
}

void draw_rest(const StockInHand& stock, const SpoolUse& use, double scale, double from, double top,
               ShapeGroup& into) {
  if (use.rest_mm == 0)
    return;
  const bool waste = use.fate == RestFate::waste;
  const double spare_mm = waste ? 0.0 : static_cast<double>(std::min(stock.kept_back_mm, use.rest_mm));
  const double whole = static_cast<double>(use.rest_mm) * scale;
  const bool broken = static_cast<double>(stock.length_mm) * scale > bar_room + 0.001;
  const double to = from + (broken ? broken_rest : whole);
  const double spare = std::min(spare_mm * scale, broken ? broken_rest / 3 : whole);
  const auto part = [&](double left, double right, BarPattern pattern) {
    draw_pattern({left, top, right, top + bar_height}, pattern, into);
  };
  const BarPattern rest = waste ? BarPattern::crossed : BarPattern::slant;
  if (!broken) {
    part(from, to - spare, rest);
    part(to - spare, to, BarPattern::upright);
    return;
  }
  const double middle = from + broken_rest / 2;
  part(from, middle - break_gap / 2, rest);
  part(middle + break_gap / 2, to - spare, rest);
  part(to - spare, to, BarPattern::upright);
  draw_break(middle - break_gap / 2, top, into);
}

std::string entry_words(const LineOrder& line, const SpoolCut& cut, std::size_t number) {
  const WantedPiece& piece = line.pieces[cut.piece];
  if (!piece.draft())
    return say(SpoolPlanPhrase::mm_cut_at_mm, number, piece.length_mm, cut.end_mm, piece_words(piece));
  return say(SpoolPlanPhrase::kept_for_it_to_be, number, planned_words(piece.length_mm, true), not_yet(),
             piece_words(piece), piece.estimated ? say(SpoolPlanPhrase::its_x_estimated) : "");
}

/// In columns, read downwards. Returns the y below the longest.
double draw_list(const std::vector<std::string>& entries, PaperPoint at, ShapeGroup& into) {
  const double width = (bar_room - (list_columns - 1) * column_gap) / list_columns;
  const std::size_t rows = (entries.size() + list_columns - 1) / list_columns;
  double below = at.y;
  for (std::size_t i = 0; i < entries.size();) {
    const double x = at.x + static_cast<double>(i / rows) * (width + column_gap);
    double y = at.y;
    for (std::size_t row = 0; row < rows && i < entries.size(); ++row, ++i)
      y = draw_words(entries[i], {x, y}, plan_small_size, width, false, into);
    below = std::max(below, y);
  }
  return below;
}

} // namespace

void draw_pattern(const PaperBox& box, BarPattern pattern, ShapeGroup& into) {
  if (box.width() <= 0.0)
    return;
  switch (pattern) {
  case BarPattern::plain:
    break;
  case BarPattern::slant:
    slanted(box, 3.0, true, into);
    break;
  case BarPattern::upright:
    for (double x = box.left + 0.6; x < box.right; x += 1.2)
      into.add(LineShape{{x, box.top}, {x, box.bottom}, thin, {}});
    break;
  case BarPattern::crossed:
    slanted(box, 1.5, true, into);
    slanted(box, 1.5, false, into);
    break;
  }
  into.add(RectangleShape{box, {0.25, 0.0, {}, {}}, {}});
}

double draw_words(const std::string& text, PaperPoint at, double size, double width, bool bold,
                  ShapeGroup& into) {
  double base = at.y + size;
  for (const std::string& line : wrap_label(text, size, width, bold)) {
    into.add(TextShape{{at.x, base}, line, size, TextAnchor::start, bold, {}});
    base += line_spacing * size;
  }
  return base - size;
}

double plan_scale(const SpoolPlan& plan) {
  double scale = 0.0;
  for (const LinePlan& line : plan.lines)
    for (const SpoolUse& use : line.uses) {
      const double length = static_cast<double>(line.order.stocks[use.stock].length_mm);
      // Whole, or with its rest broken off.
      const double fits = std::max(bar_room / length, (bar_room - broken_rest) / taken_mm(use));
      scale = scale == 0.0 ? fits : std::min(scale, fits);
    }
  return scale;
}

double draw_bar(const LineOrder& line, const SpoolUse& use, std::size_t first_number, double scale,
                PaperPoint top_left, const std::string& id, ShapeGroup& into) {
  const StockInHand& stock = line.stocks[use.stock];
  ShapeGroup group;
  group.id = id;
  group.title = stock_words(line, use);
  std::vector<std::string> entries;
  for (std::size_t i = 0; i < use.cuts.size(); ++i) {
    entries.push_back(entry_words(line, use.cuts[i], first_number + i));
    group.description += (i == 0 ? "" : "; ") + entries.back();
  }
  group.description += say(SpoolPlanPhrase::left_of, rest_words(line, use));

  const double top = draw_words(say(SpoolPlanPhrase::left_each, group.title, rest_words(line, use)),
                                top_left, plan_text_size, bar_room, true, group) +
                     1.0;
  std::vector<NumberLabel> outside;
  for (std::size_t i = 0; i < use.cuts.size(); ++i) {
    const SpoolCut& cut = use.cuts[i];
    const WantedPiece& piece = line.pieces[cut.piece];
    const PaperBox box{top_left.x + static_cast<double>(cut.start_mm) * scale, top,
                       top_left.x + static_cast<double>(cut.end_mm) * scale, top + bar_height};
    draw_pattern(box, BarPattern::plain, group);
    if (piece.draft() && box.width() > 2.4)
      group.add(RectangleShape{{box.left + 0.8, box.top + 0.8, box.right - 0.8, box.bottom - 0.8},
                               {0.2, 0.0, {1.0, 0.8}, {}},
                               {}});
    if (cut.kerf_mm > 0) {
      // As wide as it is to scale, and never thinner than print shows.
      const double kerf = std::max(0.3, static_cast<double>(cut.kerf_mm) * scale);
      group.add(LineShape{{box.right, top - 1.0}, {box.right, top + bar_height}, {kerf, 0.0, {}, {}}, {}});
    }
    const NumberLabel label{std::to_string(first_number + i), (box.left + box.right) / 2};
    if (label_width(label.text, plan_text_size) + 2.4 <= box.width())
      draw_number(label, top + bar_height / 2 + 0.35 * plan_text_size, plan_text_size, group);
    else
      outside.push_back(label);
  }
  draw_rest(stock, use, scale, top_left.x + taken_mm(use) * scale, top, group);
  double y = draw_leaders(outside, top_left.x, top + bar_height, group) + 1.0;
  y = draw_list(entries, {top_left.x, y}, group);
  into.add(std::move(group));
  return y;
}

} // namespace sheerpole
