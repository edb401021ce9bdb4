#include "plugins/bench-card/from_the_cord.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/paper_words.hpp"
#include "units/format_length.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace sheerpole {

namespace {

constexpr double row_height = 4.5;
constexpr double row_text = 3.1;

ShapeStyle stroke(double width, std::vector<double> dashes = {}) {
  return {.stroke_width = width, .stroke_grey = 0.0, .dashes = std::move(dashes), .fill_grey = {}};
}
ShapeStyle filled(double grey) {
  return {.stroke_width = 0.5, .stroke_grey = 0.0, .dashes = {}, .fill_grey = grey};
}

void write(ShapeGroup& into, PaperPoint at, const std::string& text, double size, bool bold = false,
           TextAnchor anchor = TextAnchor::start) {
  into.add(TextShape{at, text, size, anchor, bold, ""});
}

/// A round mark is made on the rope, a square one is a place on the cord.
void draw_sign(ShapeGroup& into, const CordRow& row, PaperPoint at) {
  constexpr double half = 2.0;
  if (row.mark)
    into.add(CircleShape{at, half, stroke(0.35), ""});
  else
    into.add(RectangleShape{{at.x - half, at.y - half, at.x + half, at.y + half}, stroke(0.7), ""});
  write(into, {at.x, at.y + 1.0}, row.sign, 2.8, true, TextAnchor::middle);
}

CordRow place_row(std::string sign, std::string name, CardLength inside, bool by_upper) {
  CordRow row{.sign = std::move(sign), .mark = false, .name = std::move(name), .from_u = {}, .from_l = {}};
  row.by_upper = by_upper;
  (by_upper ? row.from_u : row.from_l) = {false, inside.parts};
  (by_upper ? row.from_l : row.from_u) = {true, -inside.parts};
  return row;
}

/// Where each row stands along the drawn rope: the upper ones in its upper half, the lower ones in its
/// lower.
std::vector<double> places_on_drawing(const std::vector<CordRow>& rows, double left, double right) {
  const auto upper = static_cast<std::size_t>(
      std::count_if(rows.begin(), rows.end(), [](const CordRow& row) { return row.by_upper; }));
  const double half = (right - left) * 0.46;
  std::vector<double> result;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const bool by_upper = i < upper;
    const std::size_t count = by_upper ? upper : rows.size() - upper;
    const std::size_t number = by_upper ? i : i - upper;
    const double share = count < 2 ? 0.0 : static_cast<double>(number) / static_cast<double>(count - 1);
    result.push_back(by_upper ? left + half * share : right - half * (1.0 - share));
  }
  return result;
}

void draw_break(ShapeGroup& into, double x, double y) {
  into.add(RectangleShape{{x - 1.5, y - 1.8, x + 1.5, y + 1.8},
                          {.stroke_width = 0.0, .stroke_grey = 1.0, .dashes = {}, .fill_grey = 1.0},
                          ""});
  for (const double dx : {-1.5, 1.5})
    into.add(LineShape{{x + dx - 0.8, y + 2.0}, {x + dx + 0.8, y - 2.0}, stroke(0.35), ""});
}

constexpr double layout_height = 25.5;

/// The piece along the top, the cord below it. Not to scale: the marks stand at equal distances.
void draw_layout(const CardPiece& card, const std::vector<CordRow>& rows, double width, PaperPoint at,
                 ShapeGroup& into) {
  const double rope = at.y + 11.4;
  const double cord = at.y + 19.0;
  const double left = at.x + 3.0;
  const double right = at.x + width - 3.0;
  const double middle = (left + right) / 2.0;
  write(into, {at.x, at.y + 3.2}, "ALOFT", 3.0, true);
  write(into, {at.x + width, at.y + 3.2}, "BELOW", 3.0, true, TextAnchor::end);
  write(into, {middle, at.y + 3.2}, "not to scale; the numbers are those of the table", 2.4, false,
        TextAnchor::middle);
  into.add(LineShape{{left, rope}, {right, rope}, stroke(1.4), ""});
  draw_break(into, middle, rope);
  const std::vector<double> xs = places_on_drawing(rows, left, right);
  double upper_end = left;
  double knot = right;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    into.add(LineShape{{xs[i], rope - 2.0}, {xs[i], rope + 2.0}, stroke(0.35), ""});
    draw_sign(into, rows[i], {xs[i], rope - 4.6});
    if (rows[i].sign == "U")
      upper_end = xs[i];
    if (rows[i].sign == "L")
      knot = xs[i];
  }
  for (const double x : {upper_end, knot})
    into.add(LineShape{{x, rope + 2.4}, {x, cord - 1.8}, stroke(0.18, {0.4, 0.8}), ""});
  into.add(LineShape{{upper_end, cord}, {knot, cord}, stroke(0.7), ""});
  draw_break(into, middle, cord);
  into.add(CircleShape{{upper_end, cord}, 1.4, filled(1.0), ""});
  into.add(CircleShape{{knot, cord}, 1.6, filled(0.0), ""});
  const Reading* reading = reading_of_x(*card.stay, *card.of_stay);
  const int tally = reading == nullptr ? 0 : reading->knots.value_or(0);
  const int fitting = static_cast<int>((at.x + width - knot - 3.0) / 2.2);
  for (int i = 0; i < std::min(tally, fitting); ++i)
    into.add(CircleShape{{knot + 3.2 + 2.2 * i, cord}, 0.8, stroke(0.35), ""});
  write(into, {(upper_end + middle) / 2.0, cord - 1.2}, "X", 3.6, true, TextAnchor::middle);
  write(into, {middle, cord + 4.8}, card.cord->where, 2.8, false, TextAnchor::middle);
}

/// Columns of the table of marks: where each begins, or ends where its texts stand to the right.
struct MarkColumns {
  double sign, name, from_u, from_l, first, second, end;
};

MarkColumns mark_columns(PaperPoint at, double width) {
  return {at.x + 3.0,          at.x + 8.0,          at.x + width * 0.60, at.x + width * 0.785,
          at.x + width * 0.83, at.x + width * 0.89, at.x + width};
}

void draw_marks(const CardPiece& card, const std::vector<CordRow>& rows, double width, PaperPoint at,
                ShapeGroup& into) {
  const MarkColumns to = mark_columns(at, width);
  double y = at.y;
  const auto heading = [&](double x, const char* above, const char* below, TextAnchor anchor) {
    write(into, {x, y + 2.9}, above, 2.7, true, anchor);
    write(into, {x, y + 6.4}, below, 2.7, false, anchor);
  };
  write(into, {to.name, y + 6.4}, "mark", 2.7, true);
  heading(to.from_u, "from U,", "upper end", TextAnchor::end);
  heading(to.from_l, "from L,", "its knot", TextAnchor::end);
  heading(to.first + 1.8, "pass 1", "pinned", TextAnchor::middle);
  heading((to.second + to.end) / 2.0, "pass 2", "apart by", TextAnchor::middle);
  y += 8.0;
  into.add(LineShape{{at.x, y}, {to.end, y}, stroke(0.5), ""});
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const CordRow& row = rows[i];
    const double base = y + 3.35;
    draw_sign(into, row, {to.sign, y + 2.25});
    write(into, {to.name, base}, row.name, row_text);
    write(into, {to.from_u, base}, cord_place(card.unit, row.from_u), row_text, row.by_upper,
          TextAnchor::end);
    write(into, {to.from_l, base}, cord_place(card.unit, row.from_l), row_text, !row.by_upper,
          TextAnchor::end);
    if (row.mark) {
      into.add(RectangleShape{{to.first, y + 0.5, to.first + 3.5, y + 4.0}, stroke(0.35), ""});
      into.add(LineShape{{to.second, y + 4.0}, {to.end, y + 4.0}, stroke(0.2), ""});
    }
    y += row_height;
    const bool halves = i + 1 < rows.size() && row.by_upper && !rows[i + 1].by_upper;
    into.add(LineShape{{at.x, y}, {to.second - 1.5, y}, stroke(halves ? 0.5 : 0.15), ""});
  }
}

/// "X = ____  + 1003 mm = CUT ____  - 610 mm = body ____"
void draw_blanks(const CardPiece& card, double width, PaperPoint at, ShapeGroup& into) {
  const auto more = [&](CardLength length) {
    return (length.parts < 0 ? "- " : "+ ") +
           card.amount(CardLength{false, length.parts < 0 ? -length.parts : length.parts});
  };
  const std::string words[] = {"X =", more(card.cut) + " = CUT", more(card.body) + " = body"};
  const double parts[] = {0.24, 0.40, 0.36};
  double left = at.x;
  write(into, {left, at.y + 3.0}, "Only when X has been measured:", 2.6);
  for (std::size_t i = 0; i < 3; ++i) {
    const TextShape shape{{left, at.y + 8.4}, words[i], 3.4, TextAnchor::start, true, ""};
    into.add(shape);
    into.add(LineShape{{label_box(shape).right + 1.0, at.y + 9.0},
                       {left + width * parts[i] - 4.0, at.y + 9.0},
                       stroke(0.2),
                       ""});
    left += width * parts[i];
  }
}

/// What lies outside the bearings, and why.
std::string drawn_in_words(const CardPiece& card) {
  const CardCord& cord = *card.cord;
  std::vector<std::string> parts;
  if (cord.drawn_in_upper.parts != 0)
    parts.push_back(card.amount(cord.drawn_in_upper) + " aloft");
  if (cord.drawn_in_lower.parts != 0)
    parts.push_back(card.amount(cord.drawn_in_lower) + " below");
  std::string words;
  if (!parts.empty())
    words =
        "Rope that the splices draw in lies outside the bearings: " + joined(parts, Join::and_word) + ".";
  if (cord.behaves.parts != 0)
    add_words(words, " ",
              fmt::format("What the line stretches is laid out at the end below: {} {} its bearing.",
                          card.amount(CardLength{false, std::abs(cord.behaves.parts)}),
                          cord.behaves.parts < 0 ? "inside" : "outside"));
  return words;
}

std::string pulled(const CardPiece& card) {
  return card.cord->pull
             ? fmt::format("pulled with {} N, as it was aloft", format_fixed(card.cord->pull->newtons(), 0))
             : std::string("pulled as hard as it was aloft");
}

} // namespace

std::vector<CordRow> cord_rows(const CardPiece& card) {
  const CardCord& cord = *card.cord;
  std::vector<CordRow> upper;
  std::vector<CordRow> lower;
  for (std::size_t i = 0; i < card.marks.size(); ++i) {
    const CardMark& mark = card.marks[i];
    const bool by_upper = mark.end == WhichEnd::upper;
    (by_upper ? upper : lower)
        .push_back({std::to_string(i + 1), true, mark.name, mark.from_u, mark.from_l, by_upper});
  }
  const bool aloft_at_end = cord.upper.parts == 0;
  upper.push_back(place_row(
      "U", aloft_at_end ? "upper end of the cord, bearing aloft" : "upper end of the cord", {}, true));
  if (!aloft_at_end)
    upper.push_back(place_row("A", "bearing aloft", cord.upper, true));
  const bool below_at_knot = cord.lower.parts == 0;
  if (!below_at_knot)
    lower.push_back(place_row("B", "bearing below", cord.lower, false));
  lower.push_back(
      place_row("L", below_at_knot ? "knot of the cord, bearing below" : "knot of the cord", {}, false));
  std::stable_sort(upper.begin(), upper.end(),
                   [](const CordRow& a, const CordRow& b) { return a.from_u.parts < b.from_u.parts; });
  std::stable_sort(lower.begin(), lower.end(),
                   [](const CordRow& a, const CordRow& b) { return a.from_l.parts > b.from_l.parts; });
  upper.insert(upper.end(), lower.begin(), lower.end());
  return upper;
}

std::string cord_place(const CardUnit& unit, CardLength place) {
  if (place.unknown || place.parts == 0)
    return card_text(unit, place);
  return card_text(unit, CardLength{false, std::abs(place.parts)}) +
         (place.parts < 0 ? " past" : " inside");
}

CardLength apart_at_most(const CardPiece& card) {
  if (card.cord->knot)
    return card.unit.round_outwards(*card.cord->knot);
  return card.unit.round_outwards(card.unit.kind == CardUnit::Kind::millimetres ? Length::millimetres(5.0)
                                                                                : Length::inches(0.25));
}

void add_cord_head(const CardPiece& card, const std::string& known, PageFlow& page) {
  const std::string& title = card.stay->title;
  page.text("BENCH CARD FROM THE CORD", {.size = 3.8, .bold = true, .indent = 0.0});
  page.text(card.piece->name, {.size = 6.2, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{}; {}{}: {}, {}", title.empty() ? "" : title + ", ",
                        side_words(card.stay->side), card.line->name,
                        card.line->title.empty() ? "" : " \"" + card.line->title + "\"",
                        card.line->construction.text, card.line->size.name),
            {.size = 3.6, .bold = false, .indent = 0.0});
  page.space(1.0);
  constexpr double inside = 3.0;
  const std::string definition = joined(x_words(card), " ");
  const std::vector<std::string> lines = wrap_label(definition, 3.4, page.width() - 2.0 * inside, true);
  const double words_height = 2.0 + 3.4 * line_spacing * static_cast<double>(lines.size());
  constexpr double cells = 13.5;
  page.drawing(words_height + cells + 1.5, [&](ShapeGroup& into, PaperPoint at) {
    const double right = at.x + page.width();
    const double bottom = at.y + words_height + cells;
    into.add(RectangleShape{{at.x, at.y, right, bottom}, stroke(0.9), ""});
    into.add(LineShape{{at.x, at.y + words_height}, {right, at.y + words_height}, stroke(0.35), ""});
    for (std::size_t i = 0; i < lines.size(); ++i)
      write(into, {at.x + inside, at.y + 4.2 + 3.4 * line_spacing * static_cast<double>(i)}, lines[i], 3.4,
            true);
    const double second = at.x + page.width() * 0.46;
    const double third = at.x + page.width() * 0.72;
    for (const double x : {second, third})
      into.add(LineShape{{x, at.y + words_height}, {x, bottom}, stroke(0.35), ""});
    const auto cell = [&](double x, const std::string& name, const std::string& amount, double size) {
      write(into, {x + inside, at.y + words_height + 4.0}, name, 2.8, true);
      write(into, {x + inside, at.y + words_height + 11.4}, amount, size, true);
    };
    cell(at.x, cut_nothing(card) ? "CUT NOTHING, USE" : "CUT", card.amount(card.cut), 7.0);
    cell(second, "body, bearing to bearing", card.amount(card.body), 5.0);
    cell(third, "state", card.stamp.empty() ? "READY" : card.stamp, 4.0);
  });
  page.text(card.state_line, {.size = 2.8, .bold = card.state != PieceState::ready, .indent = 0.0});
  page.text(
      fmt::format("{} Lengths in {}; past an end is outside the cord, inside is towards the other end.{}{}",
                  known, unit_words(card.unit), card.unit.remark.empty() ? "" : " ", card.unit.remark),
      {.size = 2.8, .bold = false, .indent = 0.0});
}

void add_cord_marks(const CardPiece& card, PageFlow& page) {
  const std::vector<CordRow> rows = cord_rows(card);
  page.drawing(layout_height,
               [&](ShapeGroup& into, PaperPoint at) { draw_layout(card, rows, page.width(), at, into); });
  page.drawing(8.0 + row_height * static_cast<double>(rows.size()) + 1.5,
               [&](ShapeGroup& into, PaperPoint at) { draw_marks(card, rows, page.width(), at, into); });
  if (const std::string words = drawn_in_words(card); !words.empty())
    page.text(words, {.size = 2.8, .bold = true, .indent = 0.0});
  page.drawing(10.2, [&](ShapeGroup& into, PaperPoint at) { draw_blanks(card, page.width(), at, into); });
}

void add_cord_stop(const std::string& words, PageFlow& page) {
  constexpr double high = 16.0;
  page.drawing(high + 1.5, [&](ShapeGroup& into, PaperPoint at) {
    const double right = at.x + page.width();
    into.add(RectangleShape{{at.x, at.y, right, at.y + high}, stroke(0.9), ""});
    write(into, {at.x + 3.0, at.y + 5.4}, words, 3.8, true);
    const char* names[] = {"laid out and dry-fitted by, day", "second pass by, day"};
    for (std::size_t i = 0; i < 2; ++i) {
      const double left = at.x + 3.0 + page.width() * 0.5 * static_cast<double>(i);
      const double end = at.x + page.width() * 0.5 * static_cast<double>(i + 1) - 5.0;
      into.add(LineShape{{left, at.y + 11.0}, {end, at.y + 11.0}, stroke(0.2), ""});
      write(into, {left, at.y + 14.0}, names[i], 2.4);
    }
  });
}

std::vector<std::string> cord_steps(const CardPiece& card) {
  std::vector<std::string> steps;
  const bool closed = card.closed_aloft();
  if (closed)
    steps.push_back(fmt::format(
        "Close the end aloft first: mark {} on the wire from its end, put it in {} as "
        "deep as the mark, close it, and see that the mark has gone in. From now on "
        "its mouth counts, mark 2.",
        card.amount(card.marks[1].from_upper),
        card.piece->upper.bare()
            ? "its terminal"
            : shown(card.piece->upper.part_name(*card.rig), card.piece->upper.part_title(*card.rig))));
  const CardLength first = card.marks[closed ? 1 : 0].from_u;
  const std::string where =
      first.parts == 0 ? "at U"
                       : fmt::format("{} {} U", card.amount(CardLength{false, std::abs(first.parts)}),
                                     first.parts < 0 ? "past" : "inside");
  steps.push_back(fmt::format("Lay the cord along it, {}. Pin {} {}.", pulled(card),
                              closed ? "the mouth of the closed terminal" : "mark 1, the cut end aloft,",
                              where));
  steps.push_back("Pass 1: every mark from the bold column, from U or from L. A pin in each.");
  steps.push_back(
      fmt::format("Pass 2: take the cord up, pin L first, lay out again. Where the passes lie more "
                  "than {} apart lay out a third: the middle one counts.",
                  card.amount(apart_at_most(card))));
  return steps;
}

} // namespace sheerpole
