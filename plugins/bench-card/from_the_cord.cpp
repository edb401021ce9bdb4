#include "plugins/bench-card/from_the_cord.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/paper_words.hpp"
#include "units/format_length.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace sheerpole {

namespace {

CordRow place_row(std::string sign, std::string name, CardLength inside, bool by_upper) {
  CordRow row{.sign = std::move(sign), .mark = false, .name = std::move(name), .from_u = {}, .from_l = {}};
  row.by_upper = by_upper;
  (by_upper ? row.from_u : row.from_l) = {false, inside.parts};
  (by_upper ? row.from_l : row.from_u) = {true, -inside.parts};
  return row;
}

CordMark what_of(MarkKind kind) {
  switch (kind) {
  case MarkKind::taper_begins:
    return CordMark::taper_begins;
  case MarkKind::throat_on_tail:
    return CordMark::throat_on_tail;
  case MarkKind::throat_on_standing_part:
    return CordMark::throat_on_standing_part;
  case MarkKind::cut_end:
  case MarkKind::mouth_of_terminal:
  case MarkKind::trim_of_tail:
    break;
  }
  return CordMark::other;
}

/// As far inside the throat as the tail is long, on rope that nothing has been drawn into yet: the splice
/// shortens afterwards, with the tail in it, and does not move the mark. Common practice, no source.
CordRow where_the_tail_comes_out(const CordRow& throat, CardLength tail) {
  CordRow row = throat;
  row.what = CordMark::tail_comes_out;
  row.name = throat.by_upper ? "tail comes out aloft" : "tail comes out below";
  (row.by_upper ? row.from_u : row.from_l).parts += tail.parts;
  (row.by_upper ? row.from_l : row.from_u).parts -= tail.parts;
  return row;
}

/// "3 to 4, in at 4, out at 5, taper from 2": what is done with the marks of one end.
std::string way_of_the_tail(const std::vector<CordRow>& rows, bool by_upper) {
  std::string words;
  const CordRow* on_tail = row_of(rows, CordMark::throat_on_tail, by_upper);
  const CordRow* standing = row_of(rows, CordMark::throat_on_standing_part, by_upper);
  if (on_tail != nullptr && standing != nullptr)
    words = fmt::format("{} to {}, in at {}", on_tail->sign, standing->sign, standing->sign);
  if (const CordRow* out = row_of(rows, CordMark::tail_comes_out, by_upper))
    add_words(words, ", ", "out at " + out->sign);
  if (const CordRow* taper = row_of(rows, CordMark::taper_begins, by_upper))
    add_words(words, ", ", "taper from " + taper->sign);
  return words;
}

std::string pulled(const CardPiece& card) {
  return card.cord->pull
             ? fmt::format("pulled with {} N, as it was aloft", format_fixed(card.cord->pull->newtons(), 0))
             : std::string("pulled as hard as it was aloft");
}

/// Where L is on the rope: "mark 10 is 197 mm past it". The lowest mark has its pin from the first pass.
std::string lowest_mark(const CardPiece& card) {
  const std::vector<CordRow> rows = cord_rows(card);
  const auto lowest = std::find_if(rows.rbegin(), rows.rend(), [](const CordRow& row) { return row.mark; });
  const auto parts = lowest->from_l.parts;
  if (parts == 0)
    return fmt::format("at mark {}", lowest->sign);
  return fmt::format("mark {} is {} {} it", lowest->sign, card.amount(CardLength{false, std::abs(parts)}),
                     parts < 0 ? "past" : "inside");
}

} // namespace

const CordRow* row_of(const std::vector<CordRow>& rows, CordMark what, bool by_upper) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const CordRow& row) {
    return row.what == what && row.by_upper == by_upper;
  });
  return found == rows.end() ? nullptr : &*found;
}

std::vector<CordRow> cord_rows(const CardPiece& card) {
  const CardCord& cord = *card.cord;
  std::vector<CordRow> upper;
  std::vector<CordRow> lower;
  for (std::size_t i = 0; i < card.marks.size(); ++i) {
    const CardMark& mark = card.marks[i];
    const bool by_upper = mark.end == WhichEnd::upper;
    CordRow row{
        "", true, mark.name, mark.from_u, mark.from_l, by_upper, what_of(card.piece->bench.marks[i].kind)};
    if (row.what == CordMark::throat_on_standing_part)
      if (const CardLength tail = card_bury(card, mark.end).total; tail.parts != 0)
        (by_upper ? upper : lower).push_back(where_the_tail_comes_out(row, tail));
    (by_upper ? upper : lower).push_back(std::move(row));
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
  int number = 0;
  for (CordRow& row : upper)
    if (row.mark)
      row.sign = std::to_string(++number);
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
      fmt::format("Pass 2: take the cord up, pin L first ({}), lay out again. More than {} apart: a third "
                  "pass, the middle one counts.",
                  lowest_mark(card), card.amount(apart_at_most(card))));
  return steps;
}

std::string cord_eyes_step(const CardPiece& card) {
  const std::vector<CordRow> rows = cord_rows(card);
  std::vector<std::string> eyes;
  for (const bool by_upper : {true, false}) {
    const CordRow* on_tail = row_of(rows, CordMark::throat_on_tail, by_upper);
    const CordRow* standing = row_of(rows, CordMark::throat_on_standing_part, by_upper);
    if (on_tail != nullptr && standing != nullptr)
      eyes.push_back(fmt::format("{} to {}", on_tail->sign, standing->sign));
  }
  return eyes.empty()
             ? "Do the halves check. Seize both eyes."
             : fmt::format("Do the halves check. Bring {} and seize {}.", joined(eyes, Join::and_word),
                           eyes.size() == 2 ? "both eyes" : "the eyes");
}

std::vector<std::string> cord_splice_steps(const CardPiece& card) {
  const std::vector<CordRow> rows = cord_rows(card);
  const auto how = [&](const PieceEnd& end) {
    const std::string round =
        end.bare() ? "" : " round " + shown(end.part_name(*card.rig), end.part_title(*card.rig));
    return round + led_by(": ", splice_words(card, end));
  };
  const std::string aloft = way_of_the_tail(rows, true);
  const std::string below = way_of_the_tail(rows, false);
  if (how(card.piece->upper) == how(card.piece->lower))
    return {fmt::format("Splice both ends{}.{}{}", how(card.piece->upper),
                        aloft.empty() ? "" : " Aloft " + aloft + ".",
                        below.empty() ? "" : " Below " + below + ".")};
  return {fmt::format("Splice the end aloft{}.{}", how(card.piece->upper),
                      aloft.empty() ? "" : " Marks " + aloft + "."),
          fmt::format("Splice the end below{}.{}", how(card.piece->lower),
                      below.empty() ? "" : " Marks " + below + ".")};
}

} // namespace sheerpole
