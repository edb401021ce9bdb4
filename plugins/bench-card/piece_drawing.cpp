#include "backend/card/card_in_hand.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/stated.hpp"
#include "plugins/bench-card/card_blocks.hpp"
#include "plugins/bench-card/card_ink.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/bench_card_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numbers>
#include <utility>

namespace sheerpole {

namespace {

constexpr double rope_half = 1.3;

/// A round mark is made on the line, a square one is a place on the cord.
void draw_sign(ShapeGroup& into, const MarkRow& row, PaperPoint at, double half = 2.0) {
  const double size = (row.sign.size() > 1 ? 1.15 : 1.4) * half; // two digits stay inside the circle
  const PaperPoint base{at.x, at.y + 0.36 * size};
  if (row.is_mark()) {
    into.add(CircleShape{at, half, ink(0.35), ""});
    write(into, base, row.sign, size, true, TextAnchor::middle);
    return;
  }
  black_box(into, {at.x - half, at.y - half, at.x + half, at.y + half});
  write_white(into, base, row.sign, size, true, TextAnchor::middle);
}

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

void draw_break(ShapeGroup& into, double x, double y) {
  into.add(RectangleShape{{x - 1.5, y - 1.8, x + 1.5, y + 1.8},
                          {.stroke_width = 0.0, .stroke_grey = 1.0, .dashes = {}, .fill_grey = 1.0},
                          ""});
  for (const double dx : {-1.5, 1.5})
    into.add(LineShape{{x + dx - 0.8, y + 2.0}, {x + dx + 0.8, y - 2.0}, ink(0.35), ""});
}

void draw_braid(double left, double right, double y, ShapeGroup& into) {
  bool rising = true;
  for (double x = left + 1.6; x + 1.6 < right; x += 3.2, rising = !rising)
    into.add(
        LineShape{{x, y + (rising ? 0.5 : -0.5)}, {x + 1.4, y + (rising ? -0.5 : 0.5)}, ink(0.18), ""});
}

/// The line from one place to another: a rope as a band with strokes of its braid, a wire as one stroke.
void draw_line(const CardPiece& card, double left, double right, double y, ShapeGroup& into) {
  if (!card.rope()) {
    into.add(LineShape{{left, y}, {right, y}, ink(1.4), ""});
    return;
  }
  into.add(RectangleShape{{left, y - rope_half, right, y + rope_half}, ink(0.35), ""});
  draw_braid(left, right, y, into);
}

void draw_arrow(ShapeGroup& into, double left, double right, double y) {
  into.add(LineShape{{left, y}, {right, y}, ink(0.25), ""});
  const ShapeStyle head{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0};
  const double length = std::min(2.4, 0.3 * std::abs(right - left));
  for (const auto& [x, inwards] : {std::pair{left, length}, {right, -length}})
    into.add(PolygonShape{{{x, y}, {x + inwards, y - 0.5}, {x + inwards, y + 0.5}}, head, ""});
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

constexpr double straight_height = 16.8;
constexpr double cord_height = 27.4;

/// The piece laid out straight. Not to scale: the marks stand at equal distances.
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

// ---- The piece as it is when it is made ----

/// Where one end lies on the drawing.
struct EndPlace {
  const CardPiece& card;
  WhichEnd end = WhichEnd::upper;
  double edge = 0.0; ///< of the page
  double way = 1.0;  ///< 1 where the line runs to the right from it, -1 where to the left
  double y = 0.0;

  bool upper() const { return end == WhichEnd::upper; }
  const PieceEnd& made() const { return upper() ? card.piece->upper : card.piece->lower; }
  double at(double along) const { return edge + way * along; }
};

constexpr double crown = 7.0;
constexpr double throat = 27.0;
constexpr double out = 60.0;

/// A loop round what the eye bears on.
void draw_pear(const EndPlace& at, double half, double from, double to, ShapeGroup& into) {
  std::vector<PaperPoint> points{{at.at(to), at.y}};
  constexpr int steps = 24;
  for (int i = 0; i <= steps; ++i) {
    const double angle = std::numbers::pi * (0.40 + 1.20 * i / steps);
    points.push_back({at.at(from) + at.way * half * std::cos(angle), at.y - half * std::sin(angle)});
  }
  into.add(PolygonShape{std::move(points), ink(0.35), ""});
}

/// A thimble with its pin, a dead-eye with its holes, or a ring in the loop.
void draw_seat(const EndPlace& at, ShapeGroup& into) {
  const PaperPoint middle{at.at(crown), at.y};
  const PartKind kind = (*at.card.rig)[*at.made().part].kind;
  if (kind == PartKind::deadeye) {
    into.add(CircleShape{middle, 4.2, ink(0.35), ""});
    for (int hole = 0; hole < 5; ++hole) {
      const double angle = std::numbers::pi * (0.2 + 0.4 * hole);
      into.add(CircleShape{
          {middle.x + 2.4 * std::cos(angle), middle.y + 2.4 * std::sin(angle)}, 0.6, ink(0.35), ""});
    }
    return;
  }
  if (kind == PartKind::thimble)
    draw_pear(at, 4.0, crown, throat - 6.0, into);
  else
    into.add(CircleShape{middle, 3.0, ink(0.35), ""});
  into.add(CircleShape{middle, 1.5, filled_ink(0.0), ""});
}

const Splice* splice_of(const EndPlace& at) {
  return at.made().splice ? &(*at.card.rig)[*at.made().splice] : nullptr;
}

/// What locks the splice; empty when nothing does or nothing is stated.
std::string locked_by(const EndPlace& at) {
  const Splice* splice = splice_of(at);
  const std::string locking =
      splice == nullptr ? std::string() : fact_text(splice->particulars, fact_names.locking);
  return locking.empty() || read_stated(locking).answer == Answer::nothing ? std::string() : locking;
}

void draw_zigzag(const EndPlace& at, ShapeGroup& into) {
  std::vector<PaperPoint> points;
  for (int i = 0; i < 5; ++i)
    points.push_back({at.at(throat + 2.0 + 1.4 * i), at.y + (i % 2 == 0 ? 2.0 : -2.0)});
  into.add(PolylineShape{std::move(points), ink(0.5), ""});
}

void write_below(const EndPlace& at, double from, double to, PhraseText words, ShapeGroup& into) {
  write(into, {(at.at(from) + at.at(to)) / 2.0, at.y + 7.6}, words, 2.6, false, TextAnchor::middle);
}

/// The tail inside the standing part, dashed as what is hidden, with its taper where that is stated.
void draw_bury(const EndPlace& at, const std::vector<MarkRow>& rows, double to_middle, ShapeGroup& into) {
  const bool taper_stated =
      row_of(rows, MarkKind::taper_begins, at.upper()) != nullptr || !splice_of(at)->taper.empty();
  const double tapers = taper_stated ? out - 13.0 : out;
  // The standing part is wider where the tail lies in it, and thinner again where that tapers off.
  for (const double side : {-1.0, 1.0}) {
    into.add(PolylineShape{{{at.at(throat), at.y + side * 2.2},
                            {at.at(tapers), at.y + side * 2.2},
                            {at.at(out), at.y + side * rope_half},
                            {to_middle, at.y + side * rope_half}},
                           ink(0.35),
                           ""});
    into.add(PolylineShape{{{at.at(throat + 0.5), at.y + side * 0.9},
                            {at.at(tapers), at.y + side * 0.9},
                            {at.at(out), at.y + (taper_stated ? 0.0 : side * 0.9)}},
                           ink(0.25, {1.2, 0.8}),
                           ""});
  }
  into.add(LineShape{{at.at(out), at.y - rope_half}, {at.at(out), at.y + rope_half}, ink(0.35), ""});
  draw_braid(std::min(at.at(out), to_middle), std::max(at.at(out), to_middle), at.y, into);
  draw_arrow(into, std::min(at.at(throat), at.at(tapers)), std::max(at.at(throat), at.at(tapers)),
             at.y + 4.4);
  const bool locked = !locked_by(at).empty();
  if (locked) {
    draw_zigzag(at, into);
    write_below(at, throat + 1.0, throat + 9.0, say(BenchCardPhrase::lock_word), into);
  }
  write_below(at, locked ? throat + 9.0 : throat, tapers, say(BenchCardPhrase::bury), into);
  if (taper_stated) {
    draw_arrow(into, std::min(at.at(tapers), at.at(out)), std::max(at.at(tapers), at.at(out)), at.y + 4.4);
    write_below(at, tapers, out, say(BenchCardPhrase::taper_word), into);
  }
}

void draw_eye(const EndPlace& at, const std::vector<MarkRow>& rows, double to_middle, ShapeGroup& into) {
  if (at.made().bare() || splice_of(at) == nullptr) {
    draw_line(at.card, std::min(at.at(crown), to_middle), std::max(at.at(crown), to_middle), at.y, into);
    return;
  }
  draw_pear(at, 6.0, crown, throat, into);
  draw_seat(at, into);
  if (row_of(rows, MarkKind::throat_on_tail, at.upper()) == nullptr) {
    draw_line(at.card, std::min(at.at(throat), to_middle), std::max(at.at(throat), to_middle), at.y, into);
    return;
  }
  draw_bury(at, rows, to_middle, into);
  const auto sign = [&](const MarkRow* row, double x) {
    if (row != nullptr)
      draw_sign(into, *row, {x, at.y - 6.0});
  };
  sign(row_of(rows, MarkKind::throat_on_tail, at.upper()), at.at(throat - 2.2));
  sign(row_of(rows, MarkKind::throat_on_standing_part, at.upper()), at.at(throat + 2.2));
  sign(row_of(rows, MarkKind::tail_comes_out, at.upper()), at.at(out));
  into.add(LineShape{{at.at(throat), at.y - 4.0}, {at.at(throat), at.y - 2.2}, ink(0.25), ""});
  if (row_of(rows, MarkKind::tail_comes_out, at.upper()) != nullptr)
    into.add(LineShape{{at.at(out), at.y - 4.0}, {at.at(out), at.y - rope_half}, ink(0.25), ""});
}

/// The other end of the terminal: a fork, an eye, or a stud with its thread.
void draw_terminal_head(const EndPlace& at, const Part& part, ShapeGroup& into) {
  // A part may be used either way round: the end that takes no wire is the one that looks away from it.
  const EndType faces = part.upper.type == EndType::wire_socket   ? part.lower.type
                        : part.lower.type == EndType::wire_socket ? part.upper.type
                        : at.upper()                              ? part.upper.type
                                                                  : part.lower.type;
  const double foot = 13.0;
  if (faces == EndType::stud) {
    into.add(RectangleShape{
        {std::min(at.at(2.0), at.at(foot)), at.y - 1.2, std::max(at.at(2.0), at.at(foot)), at.y + 1.2},
        ink(0.35),
        ""});
    for (double along = 3.0; along < foot - 1.0; along += 1.2)
      into.add(LineShape{{at.at(along), at.y + 1.2}, {at.at(along + 0.6), at.y - 1.2}, ink(0.18), ""});
    return;
  }
  if (faces == EndType::jaw) {
    for (const double side : {-1.0, 1.0})
      into.add(PolylineShape{{{at.at(foot), at.y + side * 2.2},
                              {at.at(foot - 3.0), at.y + side * 3.4},
                              {at.at(1.5), at.y + side * 3.4},
                              {at.at(1.5), at.y + side * 1.8},
                              {at.at(foot - 3.0), at.y + side * 1.8}},
                             ink(0.35),
                             ""});
    into.add(LineShape{{at.at(4.5), at.y - 4.4}, {at.at(4.5), at.y + 4.4}, ink(0.7), ""});
    return;
  }
  for (const double side : {-1.0, 1.0})
    into.add(LineShape{
        {at.at(foot), at.y + side * 1.6}, {at.at(crown + 3.2), at.y + side * 1.6}, ink(0.35), ""});
  into.add(CircleShape{{at.at(crown), at.y}, 3.6, ink(0.35), ""});
  into.add(CircleShape{{at.at(crown), at.y}, 1.5, filled_ink(faces == EndType::eye ? 1.0 : 0.0), ""});
}

/// A terminal closed on its wire: the sleeve, and the wire inside it dashed to as deep as it goes.
void draw_terminal(const EndPlace& at, const std::vector<MarkRow>& rows, double to_middle,
                   ShapeGroup& into) {
  if (at.made().bare()) {
    draw_line(at.card, std::min(at.at(crown), to_middle), std::max(at.at(crown), to_middle), at.y, into);
    return;
  }
  const Part& part = (*at.card.rig)[*at.made().part];
  draw_terminal_head(at, part, into);
  draw_line(at.card, std::min(at.at(throat), to_middle), std::max(at.at(throat), to_middle), at.y, into);
  into.add(RectangleShape{
      {std::min(at.at(13.0), at.at(throat)), at.y - 2.4, std::max(at.at(13.0), at.at(throat)), at.y + 2.4},
      ink(0.5),
      ""});
  const MarkRow* mouth = row_of(rows, MarkKind::mouth_of_terminal, at.upper());
  if (mouth == nullptr)
    return;
  const double deep = 15.5;
  for (const double side : {-1.0, 1.0})
    into.add(LineShape{
        {at.at(deep), at.y + side * 0.7}, {at.at(throat), at.y + side * 0.7}, ink(0.25, {1.2, 0.8}), ""});
  into.add(LineShape{{at.at(deep), at.y - 0.7}, {at.at(deep), at.y + 0.7}, ink(0.35), ""});
  const MarkRow* end = row_of(rows, MarkKind::cut_end, at.upper());
  for (const auto& [row, x] : {std::pair{end, deep}, {mouth, throat}})
    if (row != nullptr) {
      draw_sign(into, *row, {at.at(x), at.y - 6.4});
      into.add(
          LineShape{{at.at(x), at.y - 4.4}, {at.at(x), at.y - (row == end ? 0.7 : 2.4)}, ink(0.25), ""});
    }
  draw_arrow(into, std::min(at.at(deep), at.at(throat)), std::max(at.at(deep), at.at(throat)), at.y + 4.4);
  write_below(at, deep, throat, say(BenchCardPhrase::in), into);
}

/// "inside from 4 to 5", where the marks are known.
std::string inside_words(const EndPlace& at, const std::vector<MarkRow>& rows) {
  const MarkRow* standing = row_of(rows, MarkKind::throat_on_standing_part, at.upper());
  const MarkRow* comes_out = row_of(rows, MarkKind::tail_comes_out, at.upper());
  return standing == nullptr || comes_out == nullptr
             ? std::string()
             : say(BenchCardPhrase::inside_from_to, standing->sign, comes_out->sign);
}

std::string taper_words(const EndPlace& at, const std::vector<MarkRow>& rows) {
  const MarkRow* begins = row_of(rows, MarkKind::taper_begins, at.upper());
  const std::string& stated = splice_of(at)->taper;
  if (begins == nullptr)
    return stated.empty() ? say(BenchCardPhrase::taper_not_given)
                          : say(BenchCardPhrase::taper_each, stated);
  return say(BenchCardPhrase::taper_from_of, begins->sign, stated.empty() ? "" : " (" + stated + ")");
}

std::string lock_words(const EndPlace& at) {
  const std::string stated = fact_text(splice_of(at)->particulars, fact_names.locking);
  if (stated.empty())
    return say(BenchCardPhrase::lock_not_given);
  return locked_by(at).empty() ? say(BenchCardPhrase::nothing_locks_it)
                               : say(BenchCardPhrase::locked, stated);
}

/// What stands below one end: its part and where that is, then its splice or terminal.
std::vector<std::string> words_of_end(const EndPlace& at, const std::vector<MarkRow>& rows) {
  const CardPiece& card = at.card;
  std::vector<std::string> words;
  const bool of_stay = at.upper() ? card.piece->number == 1 : card.piece->number == card.piece->of;
  const std::string where = of_stay && card.stay->path.size() > 1
                                ? ", " + where_words(*card.rig, *card.stay, at.end)
                                : std::string();
  words.push_back(
      (at.made().bare() ? say(BenchCardPhrase::no_part_named) : at.made().part_name(*card.rig)) + where);
  if (const Splice* splice = splice_of(at)) {
    words.push_back(bury_words(card, at.end) + inside_words(at, rows));
    if (holds_by_bury(*splice))
      words.push_back(taper_words(at, rows) + "; " + lock_words(at));
  } else if (const MarkRow* mouth = row_of(rows, MarkKind::mouth_of_terminal, at.upper())) {
    const CardMark& mark = at.upper() ? card.marks[1] : card.marks[card.marks.size() - 2];
    words.push_back(say(BenchCardPhrase::wire_inside_to_mark,
                        card.amount(at.upper() ? mark.from_upper : mark.from_lower), mouth->sign));
  } else if (!card.rope() && !at.made().bare()) {
    words.push_back(say(BenchCardPhrase::how_deep_wire_goes_in));
  }
  return words;
}

void draw_tips(const std::vector<TipRow>& tips, double left, double right, double y, ShapeGroup& into) {
  const auto apart = (right - left) / static_cast<double>(tips.size() + 1);
  for (std::size_t i = 0; i < tips.size(); ++i) {
    double x = left + apart * static_cast<double>(i + 1);
    if (const double from_break = x - (left + right) / 2.0; std::abs(from_break) < 2.6)
      x += from_break < 0.0 ? -2.6 : 2.6; // the break of the drawing is there
    const ShapeStyle black{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0};
    into.add(LineShape{{x, y - 4.0}, {x, y + 2.0}, ink(0.35), ""});
    into.add(PolygonShape{{{x, y - 5.6}, {x + 1.2, y - 4.0}, {x, y - 2.4}, {x - 1.2, y - 4.0}}, black, ""});
    const std::string& sign = tips[i].sign;
    write(into, {x, y - 6.4}, sign, fitted(sign, 2.8, true, apart - 0.6), true, TextAnchor::middle);
  }
}

/// In the middle below the line: how much is buried at each end.
void write_burys(const CardPiece& card, double middle, double y, double room, ShapeGroup& into) {
  const std::string aloft = bury_words(card, WhichEnd::upper);
  const std::string below = bury_words(card, WhichEnd::lower);
  std::vector<std::string> lines;
  if (aloft == below)
    lines.push_back(led_by(say(BenchCardPhrase::both_ends_colon), aloft));
  else
    lines = {led_by(say(BenchCardPhrase::aloft_before), aloft),
             led_by(say(BenchCardPhrase::below_before), below)};
  for (const std::string& line : lines) {
    y += 3.4;
    write(into, {middle, y + 1.6}, line, fitted(line, 2.6, true, room), true, TextAnchor::middle);
  }
}

constexpr double finished_height = 17.6;
constexpr double words_begin = 10.9; ///< below the middle of the line
constexpr double words_apart = 3.2;

void draw_finished(const CardPiece& card, const std::vector<MarkRow>& rows, bool with_words, double width,
                   PaperPoint at, ShapeGroup& into) {
  const double y = at.y + 8.6;
  const double middle = at.x + width / 2.0;
  for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower}) {
    const bool upper = end == WhichEnd::upper;
    const EndPlace place{card, end, upper ? at.x : at.x + width, upper ? 1.0 : -1.0, y};
    const double to_middle = middle - place.way * 1.5;
    if (card.rope())
      draw_eye(place, rows, to_middle, into);
    else
      draw_terminal(place, rows, to_middle, into);
    double base = y + words_begin;
    for (const std::string& words : with_words ? words_of_end(place, rows) : std::vector<std::string>{}) {
      write(into, {place.edge, base}, words, fitted(words, 2.6, false, width / 2.0 - 2.5), false,
            upper ? TextAnchor::start : TextAnchor::end);
      base += words_apart;
    }
  }
  if (!with_words)
    write_burys(card, middle, y, width - 2.0 * out - 4.0, into);
  draw_tips(tip_rows(card), at.x + out, at.x + width - out, y, into);
  draw_break(into, middle, y);
}

std::size_t lines_of_ends(const CardPiece& card, const std::vector<MarkRow>& rows) {
  std::size_t most = 1;
  for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower})
    most = std::max(most, words_of_end({card, end}, rows).size());
  return most;
}

} // namespace

void add_piece_drawings(const CardPiece& card, const CardLook& look, PageFlow& page) {
  const std::vector<MarkRow> rows = mark_rows(card);
  page.drawing(card.cord ? cord_height : straight_height,
               [&](ShapeGroup& into, PaperPoint at) { draw_straight(card, rows, page.width(), at, into); });
  if (look.finished == CardLook::Finished::in_words) {
    for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower})
      page.text(fmt::format("{}: {}.",
                            end == WhichEnd::upper ? say(BenchCardPhrase::aloft_begins)
                                                   : say(BenchCardPhrase::below_begins),
                            joined(words_of_end({card, end}, rows), "; ")),
                {.size = look.small, .bold = false, .indent = 0.0});
    return;
  }
  const bool with_words = look.finished == CardLook::Finished::drawn_with_words;
  const double height =
      with_words ? 8.6 + words_begin + words_apart * static_cast<double>(lines_of_ends(card, rows)) - 1.2
                 : finished_height;
  page.drawing(height, [&](ShapeGroup& into, PaperPoint at) {
    draw_finished(card, rows, with_words, page.width(), at, into);
  });
}

} // namespace sheerpole
