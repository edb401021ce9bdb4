#include "plugins/bench-card/mark_rows.hpp"

#include "backend/paper_words.hpp"
#include "calculate/cut/cut_phrase.hpp"
#include "calculate/cut/line_ends.hpp"
#include "calculate/length/body.hpp"
#include "calculate/length/path_length.hpp"
#include "wording/papers/bench_card_words.hpp"

#include <algorithm>
#include <cstdlib>
#include <iterator>
#include <string_view>
#include <variant>

namespace sheerpole {

namespace {

MarkRow place_row(std::string sign, std::string name, CardLength inside, bool by_upper) {
  MarkRow row{.sort = MarkRow::Sort::place, .sign = std::move(sign), .name = std::move(name)};
  row.by_upper = by_upper;
  (by_upper ? row.from_u : row.from_l) = {false, inside.parts};
  (by_upper ? row.from_l : row.from_u) = {true, -inside.parts};
  return row;
}

/// "throat, on the tail" of "throat aloft, on the tail".
std::string without_its_end(std::string name) {
  for (const std::string_view end :
       {say(BenchCardPhrase::aloft_behind), say(BenchCardPhrase::below_behind)})
    if (const std::size_t at = name.find(end); at != std::string::npos)
      return name.erase(at, end.size());
  return name;
}

MarkRow row_of_mark(const CardPiece& card, std::size_t i) {
  const CardMark& mark = card.marks[i];
  MarkRow row{.sort = MarkRow::Sort::mark, .sign = "", .name = without_its_end(mark.name)};
  row.from_u = card.cord ? mark.from_u : mark.from_upper;
  row.from_l = card.cord ? mark.from_l : mark.from_lower;
  row.by_upper = mark.end == WhichEnd::upper;
  row.kind = card.piece->bench.marks[i].kind;
  return row;
}

/// Each compares the allowance that counts with another way to it: the other length, and the difference.
constexpr CutPhrase eye_notes[] = {CutPhrase::wrap_gives_more,   CutPhrase::wrap_gives_less,
                                   CutPhrase::splice_gives_more, CutPhrase::splice_gives_less,
                                   CutPhrase::seat_gives_more,   CutPhrase::seat_gives_less};

std::string eye_words(const CardPiece& card, const PieceEnd& end) {
  if (!end.boxed.empty())
    return card.spoken(end.boxed);
  std::vector<std::string> words;
  for (const Remark& note : end.notes)
    if (eye_disagrees(card, end, note))
      words.push_back(card.spoken(note));
  return words.empty() ? std::string()
                       : say(BenchCardPhrase::taken, eye_taken(card, end), joined(words, "; "));
}

/// Where a taper would be marked if the splice said over how much of the tail it goes.
bool lacks_its_taper(const CardPiece& card, WhichEnd where) {
  const PieceEnd& end = where == WhichEnd::upper ? card.piece->upper : card.piece->lower;
  return end.splice && holds_by_bury((*card.rig)[*end.splice]) &&
         std::none_of(card.piece->bench.marks.begin(), card.piece->bench.marks.end(),
                      [&](const BenchMark& mark) {
                        return mark.kind == MarkKind::taper_begins && mark.end == where;
                      });
}

void add_not_given(const CardPiece& card, std::vector<MarkRow>& rows, bool by_upper) {
  const auto throat = std::find_if(rows.begin(), rows.end(),
                                   [](const MarkRow& row) { return row.kind == MarkKind::throat_on_tail; });
  if (throat == rows.end() || !lacks_its_taper(card, by_upper ? WhichEnd::upper : WhichEnd::lower))
    return;
  MarkRow row{.sort = MarkRow::Sort::not_given, .sign = "", .name = say(BenchCardPhrase::taper_begins)};
  row.by_upper = by_upper;
  const PieceEnd& end = by_upper ? card.piece->upper : card.piece->lower;
  if (const std::string& taper = (*card.rig)[*end.splice].taper; !taper.empty()) {
    row.name = say(BenchCardPhrase::taper_of, taper);
    row.in_words = true;
  }
  rows.insert(by_upper ? throat : std::next(throat), std::move(row));
}

} // namespace

bool MarkRow::u_is_nearer() const {
  return from_u.unknown == from_l.unknown ? from_u.parts <= from_l.parts : !from_u.unknown;
}

const MarkRow* row_of(const std::vector<MarkRow>& rows, MarkKind kind, bool by_upper) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const MarkRow& row) {
    return row.is_mark() && row.kind == kind && row.by_upper == by_upper;
  });
  return found == rows.end() ? nullptr : &*found;
}

std::vector<MarkRow> mark_rows(const CardPiece& card) {
  std::vector<MarkRow> upper;
  std::vector<MarkRow> lower;
  for (std::size_t i = 0; i < card.marks.size(); ++i) {
    MarkRow row = row_of_mark(card, i);
    (row.by_upper ? upper : lower).push_back(std::move(row));
  }
  if (card.cord) {
    const CardCord& cord = *card.cord;
    const bool aloft_at_end = cord.upper.parts == 0;
    upper.push_back(place_row("U",
                              aloft_at_end ? say(BenchCardPhrase::end_cord_bearing_aloft)
                                           : say(BenchCardPhrase::upper_end_cord),
                              {}, true));
    if (!aloft_at_end)
      upper.push_back(place_row("A", say(BenchCardPhrase::bearing_aloft), cord.upper, true));
    const bool below_at_knot = cord.lower.parts == 0;
    if (!below_at_knot)
      lower.push_back(place_row("B", say(BenchCardPhrase::bearing_below), cord.lower, false));
    lower.push_back(place_row("L",
                              below_at_knot ? say(BenchCardPhrase::knot_cord_bearing_below)
                                            : say(BenchCardPhrase::knot_cord),
                              {}, false));
    std::stable_sort(upper.begin(), upper.end(),
                     [](const MarkRow& a, const MarkRow& b) { return a.from_u.parts < b.from_u.parts; });
    std::stable_sort(lower.begin(), lower.end(),
                     [](const MarkRow& a, const MarkRow& b) { return a.from_l.parts > b.from_l.parts; });
  }
  add_not_given(card, upper, true);
  add_not_given(card, lower, false);
  upper.insert(upper.end(), std::make_move_iterator(lower.begin()), std::make_move_iterator(lower.end()));
  int number = 0;
  for (MarkRow& row : upper)
    if (row.is_mark())
      row.sign = std::to_string(++number);
  return upper;
}

std::string cord_place(const CardUnit& unit, CardLength place) {
  if (place.unknown || place.parts == 0)
    return card_text(unit, place);
  return card_text(unit, CardLength{false, std::abs(place.parts)}) +
         (place.parts < 0 ? say(BenchCardPhrase::past_behind) : say(BenchCardPhrase::inside_behind));
}

CardLength apart_at_most(const CardPiece& card) {
  if (card.cord && card.cord->knot)
    return card.unit.round_outwards(*card.cord->knot);
  return card.unit.round_outwards(card.unit.kind == CardUnit::Kind::millimetres ? Length::millimetres(5.0)
                                                                                : Length::inches(0.25));
}

bool eye_disagrees(const CardPiece& card, const PieceEnd& end, const Remark& note) {
  const bool of_splice = note.is(CutPhrase::splice_gives_more) || note.is(CutPhrase::splice_gives_less);
  if (of_splice && end.splice && (*card.rig)[*end.splice].eye_allowance->value.in_diameters)
    return false;
  const bool of_eye =
      std::any_of(std::begin(eye_notes), std::end(eye_notes), [&](CutPhrase one) { return note.is(one); });
  const auto limit = card.rig->limits.length(Limit::eye_ways_apart);
  if (!of_eye || !limit || note.arguments().size() < 2)
    return false;
  const auto* apart = std::get_if<Length>(&note.arguments()[1]);
  return apart != nullptr && *apart > *limit;
}

bool wire_goes_into_sleeve(const CardPiece& card, const PieceEnd& end) {
  return end.part && wire_end((*card.rig)[*end.part].kind) == WireEnd::sleeve;
}

std::string eye_taken(const CardPiece& card, const PieceEnd& end) {
  const WhichEnd where = &end == &card.piece->upper ? WhichEnd::upper : WhichEnd::lower;
  for (const Term& term : card.piece->cut.terms)
    if (term.kind == TermKind::eye_allowance && term.is_of(where))
      return card.amount(term.amount);
  return say(BenchCardPhrase::nothing);
}

bool eyes_by_rule(const CardPiece& card) {
  for (const PieceEnd* end : {&card.piece->upper, &card.piece->lower}) {
    if (!end->boxed.empty())
      return false;
    const bool disagrees = std::any_of(end->notes.begin(), end->notes.end(),
                                       [&](const Remark& note) { return eye_disagrees(card, *end, note); });
    const bool wrapped = end->part && (*card.rig)[*end->part].wrap;
    if (disagrees && (wrapped || !end->splice || !(*card.rig)[*end->splice].eye_allowance ||
                      !(*card.rig)[*end->splice].eye_allowance->value.in_diameters))
      return false;
  }
  return true;
}

std::vector<std::string> eyes_that_disagree(const CardPiece& card) {
  const std::string aloft = eye_words(card, card.piece->upper);
  const std::string below = eye_words(card, card.piece->lower);
  if (aloft == below)
    return aloft.empty() ? std::vector<std::string>{} : std::vector{say(BenchCardPhrase::both_ends, aloft)};
  std::vector<std::string> words;
  if (!aloft.empty())
    words.push_back(say(BenchCardPhrase::aloft_of, aloft));
  if (!below.empty())
    words.push_back(say(BenchCardPhrase::below_of, below));
  return words;
}

std::vector<TipRow> tip_rows(const CardPiece& card) {
  const Stay& stay = *card.stay;
  const Rig& rig = *card.rig;
  if (card.piece->of > 1 || !card.complete || stay.path.empty())
    return {};
  Length above; // a boat fitting takes nothing
  for (std::size_t i = 0; i < card.item; ++i)
    above += taken_length(rig, stay.stack[i]).value_or(Length{});
  std::vector<TipRow> rows;
  Length along;
  bool assumed = !rig[stay.path.front().point].provenance.assumptions.empty();
  for (std::size_t i = 1; i + 1 < stay.path.size(); ++i) {
    const Point& tip = rig[stay.path[i].point];
    along += distance(rig[stay.path[i - 1].point].position, tip.position);
    assumed = assumed || !tip.provenance.assumptions.empty();
    TipRow row;
    row.assumed = assumed;
    row.sign = "T" + std::to_string(i);
    row.name = tip.name + ", " + std::string(name_of(stay.path[i].passage));
    row.from_aloft = card.unit.round(along - above);
    row.from_below = card.body - row.from_aloft;
    rows.push_back(std::move(row));
  }
  return rows;
}

} // namespace sheerpole
