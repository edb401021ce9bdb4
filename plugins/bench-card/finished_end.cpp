#include "plugins/bench-card/finished_end.hpp"

#include "backend/card/card_in_hand.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/stated.hpp"
#include "plugins/bench-card/piece_shapes.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/bench_card_words.hpp"
#include "wording/papers/chain_words.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace sheerpole {

namespace {

constexpr double crown = 7.0;
constexpr double throat = 27.0;

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

/// The mast, or whatever a soft eye lies round: cut through, hatched, and no part of the line.
void draw_what_it_lies_round(const PaperPoint& middle, ShapeGroup& into) {
  constexpr double radius = 4.8;
  const double slope = std::numbers::sqrt2 / 2.0;
  into.add(CircleShape{middle, radius, ink(0.25), ""});
  for (const double apart : {-3.6, -1.8, 0.0, 1.8, 3.6}) {
    const double half = std::sqrt(radius * radius - apart * apart);
    into.add(LineShape{{middle.x + slope * (apart - half), middle.y + slope * (apart + half)},
                       {middle.x + slope * (apart + half), middle.y + slope * (apart - half)},
                       ink(0.18),
                       ""});
  }
}

/// A thimble with its pin, a dead-eye with its holes, or a ring in the loop.
void draw_seat(const EndPlace& at, ShapeGroup& into) {
  const PaperPoint middle{at.at(crown), at.y};
  const PartKind kind = (*at.card.rig)[*at.made().part].kind;
  if (kind == PartKind::soft_eye)
    return draw_what_it_lies_round(middle, into);
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

} // namespace

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

namespace {

/// A wire round what it holds and back along itself: into a sleeve, or tucked or seized.
void draw_wire_loop(const EndPlace& at, const std::vector<MarkRow>& rows, double to_middle,
                    ShapeGroup& into) {
  constexpr double sleeve_ends = throat + 9.0;
  draw_pear(at, 5.4, crown, throat, into);
  draw_seat(at, into);
  draw_line(at.card, std::min(at.at(sleeve_ends), to_middle), std::max(at.at(sleeve_ends), to_middle), at.y,
            into);
  into.add(RectangleShape{{std::min(at.at(throat), at.at(sleeve_ends)), at.y - 2.2,
                           std::max(at.at(throat), at.at(sleeve_ends)), at.y + 2.2},
                          ink(0.5),
                          ""});
  const double tail_ends = sleeve_ends - 1.5;
  into.add(
      LineShape{{at.at(throat), at.y + 0.8}, {at.at(tail_ends), at.y + 0.8}, ink(0.25, {1.2, 0.8}), ""});
  // The mark of its bearing ends up neither at the crown nor at a place that can be told without the shape.
  const MarkRow* end = row_of(rows, MarkKind::cut_end, at.upper());
  if (end != nullptr) {
    draw_sign(into, *end, {at.at(tail_ends), at.y - 6.4});
    into.add(LineShape{{at.at(tail_ends), at.y - 4.4}, {at.at(tail_ends), at.y + 0.8}, ink(0.25), ""});
  }
  write_below(at, throat, sleeve_ends,
              say(wire_goes_into_sleeve(at.card, at.made()) ? BenchCardPhrase::sleeve
                                                            : BenchCardPhrase::tucks_or_seizing),
              into);
}

/// A chain with what holds its end link.
void draw_pinned_chain(const EndPlace& at, const std::vector<MarkRow>& rows, double to_middle,
                       ShapeGroup& into) {
  const double pin = at.at(crown);
  draw_line(at.card, std::min(at.at(crown - 1.5), to_middle), std::max(at.at(crown - 1.5), to_middle), at.y,
            into);
  into.add(CircleShape{{pin, at.y}, 0.9, filled_ink(0.0), ""});
  if (const MarkRow* end = row_of(rows, MarkKind::cut_end, at.upper())) {
    draw_sign(into, *end, {pin, at.y - 6.4});
    into.add(LineShape{{pin, at.y - 4.4}, {pin, at.y - 1.8}, ink(0.25), ""});
  }
}

} // namespace

void draw_terminal(const EndPlace& at, const std::vector<MarkRow>& rows, double to_middle,
                   ShapeGroup& into) {
  if (at.made().bare()) {
    draw_line(at.card, std::min(at.at(crown), to_middle), std::max(at.at(crown), to_middle), at.y, into);
    return;
  }
  if (at.card.chain())
    return draw_pinned_chain(at, rows, to_middle, into);
  if (row_of(rows, MarkKind::crown_of_loop, at.upper()) != nullptr)
    return draw_wire_loop(at, rows, to_middle, into);
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
    words.push_back(say(BenchCardPhrase::wire_inside_to_mark, name_of(card.line->kind),
                        card.amount(at.upper() ? mark.from_upper : mark.from_lower), mouth->sign));
  } else if (const MarkRow* round = row_of(rows, MarkKind::crown_of_loop, at.upper())) {
    const CardMark& mark = at.upper() ? card.marks[1] : card.marks[card.marks.size() - 2];
    words.push_back(say(wire_goes_into_sleeve(card, at.made())
                            ? BenchCardPhrase::wire_round_with_mark
                            : BenchCardPhrase::wire_round_back_along_itself,
                        card.amount(at.upper() ? mark.from_upper : mark.from_lower), round->sign));
  } else if (card.links) {
    words.push_back(say(ChainPhrase::at_link, at.upper() ? std::int64_t{1} : card.links->count));
  } else if (!card.rope() && !card.chain() && !at.made().bare()) {
    words.push_back(say(BenchCardPhrase::how_deep_wire_goes_in, name_of(card.line->kind)));
  }
  return words;
}

} // namespace sheerpole
