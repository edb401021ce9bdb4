#include "backend/drawing/label_text.hpp"
#include "plugins/bench-card/card_blocks.hpp"
#include "plugins/bench-card/piece_shapes.hpp"
#include "wording/papers/bench_card_words.hpp"

#include <algorithm>
#include <cstdlib>

namespace sheerpole {

namespace {

/// The marks and places that are drawn.
std::vector<const MarkRow*> drawn(const std::vector<MarkRow>& rows) {
  std::vector<const MarkRow*> result;
  for (const MarkRow& row : rows)
    if (row.sort != MarkRow::Sort::not_given)
      result.push_back(&row);
  return result;
}

/// Where each stands along the drawn line: those of the end aloft in its upper half, the others in its
/// lower.
std::vector<double> places_on_drawing(const std::vector<const MarkRow*>& rows, double left, double right) {
  const auto upper = static_cast<std::size_t>(
      std::count_if(rows.begin(), rows.end(), [](const MarkRow* row) { return row->by_upper; }));
  const double half = (right - left) * 0.45;
  std::vector<double> result;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const bool by_upper = i < upper;
    const std::size_t count = by_upper ? upper : rows.size() - upper;
    const std::size_t number = by_upper ? i : i - upper;
    const double share = count < 2 ? 0.0 : static_cast<double>(number) / static_cast<double>(count - 1);
    result.push_back(by_upper ? left + half * share : right - half * (count < 2 ? 0.0 : 1.0 - share));
  }
  return result;
}

constexpr double tally_begins = 3.2; ///< from the middle of the knot
constexpr double tally_apart = 2.2;

int tally_of(const CardPiece& card) {
  const Reading* reading = card.cord ? reading_of_x(*card.stay, *card.of_stay) : nullptr;
  return reading == nullptr ? 0 : reading->knots.value_or(0);
}

constexpr double number_margin = 6.4; ///< half of the widest number below the outermost mark

/// How far a row lies from the nearer end of the cord, below its mark.
void write_places(const CardPiece& card, const std::vector<const MarkRow*>& rows,
                  const std::vector<double>& xs, PaperPoint at, double width, ShapeGroup& into) {
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const CardLength place = rows[i]->by_upper ? rows[i]->from_u : rows[i]->from_l;
    const std::string number = card_text(card.unit, {false, std::abs(place.parts)});
    // Between its neighbours and the margins of the page.
    const bool first = i == 0;
    const bool last = i + 1 == rows.size();
    const double before = first ? xs[i + 1] - xs[i] : xs[i] - xs[i - 1];
    const double behind = last ? before : xs[i + 1] - xs[i];
    const bool end_of_cord = rows[i]->sign == "U" || rows[i]->sign == "L";
    double room = std::min(before, behind) - 1.0;
    if (first || last)
      room = std::min(room, 2.0 * std::min(xs[i] - at.x, at.x + width - xs[i]));
    write(into, {xs[i], at.y}, number, fitted(number, 2.7, end_of_cord, room), end_of_cord,
          TextAnchor::middle);
  }
}

/// From each mark to the next, between the two.
void write_ways(const CardPiece& card, const std::vector<const MarkRow*>& rows,
                const std::vector<double>& xs, double y, ShapeGroup& into) {
  for (std::size_t i = 0; i + 1 < rows.size(); ++i) {
    // One of the two is known from aloft and the other from below where they are of two ends and the cut is
    // X.
    const CardLength way = rows[i + 1]->from_u - rows[i]->from_u;
    const std::string number = card_text(card.unit, way);
    write(into, {(xs[i] + xs[i + 1]) / 2.0, y}, number, fitted(number, 2.7, false, xs[i + 1] - xs[i] - 1.6),
          false, TextAnchor::middle);
  }
}

/// The cord below the piece, from U to L, with its tally.
void draw_cord(const CardPiece& card, const std::vector<const MarkRow*>& rows,
               const std::vector<double>& xs, PaperPoint at, double width, ShapeGroup& into) {
  const double rope = at.y - 10.2;
  double upper_end = xs.front();
  double knot = xs.back();
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (rows[i]->sign == "U")
      upper_end = xs[i];
    if (rows[i]->sign == "L")
      knot = xs[i];
  }
  const double middle = at.x + width / 2.0;
  const double cord = at.y;
  for (const double x : {upper_end, knot})
    into.add(LineShape{{x, rope + 6.2}, {x, cord - 1.8}, ink(0.18, {0.4, 0.8}), ""});
  into.add(LineShape{{upper_end, cord}, {knot, cord}, ink(0.7), ""});
  draw_break(into, middle, cord);
  into.add(CircleShape{{upper_end, cord}, 1.4, filled_ink(1.0), ""});
  into.add(CircleShape{{knot, cord}, 1.6, filled_ink(0.0), ""});
  // All of it or nothing: a tally that is cut off at the edge is another one. Its number stands beside it.
  const int tally = tally_of(card);
  if (knot + tally_begins + tally_apart * (tally - 1) + 0.8 <= at.x + width)
    for (int i = 0; i < tally; ++i)
      into.add(CircleShape{{knot + tally_begins + tally_apart * i, cord}, 0.8, ink(0.35), ""});
  write(into, {middle + 4.0, cord - 1.4}, card.cord->where,
        fitted(card.cord->where, 2.8, false, knot - middle - 8.0));
  for (const double x : {upper_end, knot})
    into.add(LineShape{{x, cord + 2.0}, {x, cord + 6.6}, ink(0.18), ""});
  draw_arrow(into, upper_end, knot, cord + 5.8);
  write(into, {middle, cord + 5.0}, "X", 3.6, true, TextAnchor::middle);
}

} // namespace

double straight_height(const CardPiece& card) {
  return card.cord ? 27.4 : 16.8;
}

void draw_straight(const CardPiece& card, const std::vector<MarkRow>& all, double width, PaperPoint at,
                   ShapeGroup& into) {
  const std::vector<const MarkRow*> rows = drawn(all);
  const double rope = at.y + 10.4;
  const double margin = card.cord ? number_margin : 3.0;
  const double left = at.x + margin;
  // Where the cord ends with the piece its tally needs room beyond it.
  const int tally = tally_of(card);
  const bool ends_with_tally = !rows.empty() && rows.back()->sign == "L" && tally > 0 && tally <= 10;
  const double right =
      at.x + width - (ends_with_tally ? std::max(margin, tally_begins + tally_apart * tally) : margin);
  const double middle = (left + right) / 2.0;
  write(into, {at.x, at.y + 3.2}, say(BenchCardPhrase::aloft_capitals), 3.2, true);
  write(into, {at.x + width, at.y + 3.2}, say(BenchCardPhrase::below_capitals), 3.2, true, TextAnchor::end);
  write(into, {middle, at.y + 3.2},
        card.cord ? say(BenchCardPhrase::not_to_scale_past_outside) : say(BenchCardPhrase::not_to_scale),
        2.6, false, TextAnchor::middle);
  const std::vector<double> xs = places_on_drawing(rows, left, right);
  draw_line(card, left, middle - 1.5, rope, into);
  draw_line(card, middle + 1.5, right, rope, into);
  draw_break(into, middle, rope);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    into.add(LineShape{{xs[i], rope - 2.0}, {xs[i], rope + 2.0}, ink(0.5), ""});
    draw_sign(into, *rows[i], {xs[i], rope - 4.6});
  }
  if (card.cord) {
    write_places(card, rows, xs, {at.x, rope + 5.2}, width, into);
    draw_cord(card, rows, xs, {at.x, rope + 10.2}, width, into);
  } else {
    write_ways(card, rows, xs, rope + 5.2, into);
  }
}

} // namespace sheerpole
