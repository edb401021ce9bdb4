#include "backend/card/card_in_hand.hpp"

#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "units/format_length.hpp"
#include "wording/papers/papers_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace sheerpole {

namespace {

constexpr WhichEnd both_ends[] = {WhichEnd::upper, WhichEnd::lower};

const Splice* splice_at(const CardPiece& card, WhichEnd end) {
  const auto& splice = end == WhichEnd::upper ? card.piece->upper.splice : card.piece->lower.splice;
  return splice ? &(*card.rig)[*splice] : nullptr;
}

/// What lies past the bearings before anything is buried, and what it means when it is found otherwise.
std::string halves_words(const CardPiece& card) {
  const auto [upper, lower] = card_halves(card);
  const CardLength more{false, std::abs(upper.parts - lower.parts)};
  const std::string differ = more.parts == 0 ? say(PapersPhrase::alike)
                                             : say(PapersPhrase::more, card.amount(more),
                                                   upper.parts > lower.parts ? say(PapersPhrase::aloft)
                                                                             : say(PapersPhrase::below));
  return say(PapersPhrase::check_by_halves_nothing_buried, card.amount(upper), card.amount(lower), differ,
             card.piece->cut.unknown ? "X" : say(PapersPhrase::the_length));
}

std::string state_words(const CardPiece& card, const InHand& there) {
  // The cut is as printed what is in hand less what is cut away.
  const CardLength stated = card.unit.round(Tenths::of(there.stated.value));
  const CardLength cut_away = there.beyond ? card.unit.round(there.cut_away) : stated - card.cut;
  const std::string have =
      there.beyond
          ? say(PapersPhrase::in_hand_more_than_least, card.amount(there.over))
          : say(PapersPhrase::in_hand_more_than_least_cut, card.amount(stated), card.amount(there.over));
  const std::string stock = there.stock.empty() ? "" : fmt::format(" ({})", there.stock);
  const bool keeps = there.kept > Length{};
  if (there.cut_nothing())
    return say(PapersPhrase::cut_nothing, have, stock,
               keeps ? say(PapersPhrase::it_goes_into_longer_burys) : "");
  return say(PapersPhrase::is_cut_away, have, stock,
             keeps ? say(PapersPhrase::it_goes_into_longer_burys_and) : "", card.amount(cut_away));
}

/// How far the tails may be tapered where they are longer than the splice says; ends alike in one sentence.
std::vector<std::string> taper_lines(const CardPiece& card, const InHand& there) {
  std::vector<std::string> lines;
  std::vector<std::pair<WhichEnd, CardLength>> tapers;
  for (const WhichEnd end : both_ends)
    if (there.at(end).more > Length{})
      if (const auto taper = longest_taper(*card.rig, *card.piece, end))
        tapers.emplace_back(end, card.unit.round(*taper));
  if (tapers.size() == 2 && tapers[0].second.parts == tapers[1].second.parts)
    return {say(PapersPhrase::both_tails_may_be_tapered, card.amount(tapers[0].second))};
  for (const auto& [end, taper] : tapers)
    lines.push_back(say(PapersPhrase::tail_may_be_tapered_over, word_of(end), card.amount(taper)));
  return lines;
}

} // namespace

CardBury card_bury(const CardPiece& card, WhichEnd end) {
  const Buried found = buried(*card.piece, end);
  CardBury result;
  result.bury = card.unit.round(found.bury);
  result.total = card.unit.round(found.total());
  result.spare = result.total - result.bury;
  return result;
}

std::string bury_words(const CardPiece& card, WhichEnd end) {
  const Splice* splice = splice_at(card, end);
  if (splice == nullptr)
    return {};
  const CardBury found = card_bury(card, end);
  std::string words = say(PapersPhrase::bury, card.amount(found.bury));
  if (splice->bury.value.in_diameters)
    words += fmt::format(" ({} d)", format_number(splice->bury.value.amount));
  if (found.spare.parts != 0)
    words += say(PapersPhrase::spare, card.amount(found.spare), card.amount(found.total));
  return words;
}

std::string tails_words(const CardPiece& card) {
  std::vector<std::string> tails;
  for (const WhichEnd end : both_ends)
    if (card_bury(card, end).spare.parts != 0)
      tails.push_back(fmt::format("{} {}", word_of(end), bury_words(card, end)));
  return joined(tails, "; ");
}

std::optional<CardLength> throat_to_throat(const CardPiece& card, WhichEnd end) {
  std::optional<long> on_tail, on_standing_part;
  for (std::size_t i = 0; i < card.marks.size(); ++i) {
    const BenchMark& mark = card.piece->bench.marks[i];
    // Of a length that is X one of the two columns is a number, that from the nearer end.
    const long from_its_end =
        end == WhichEnd::upper ? card.marks[i].from_upper.parts : card.marks[i].from_lower.parts;
    if (mark.end == end && mark.kind == MarkKind::throat_on_tail)
      on_tail = from_its_end;
    if (mark.end == end && mark.kind == MarkKind::throat_on_standing_part)
      on_standing_part = from_its_end;
  }
  if (!on_tail || !on_standing_part)
    return std::nullopt;
  return CardLength{false, *on_standing_part - *on_tail};
}

std::optional<Force> setting_load(const CardPiece& card) {
  std::optional<std::pair<std::string, Force>> latest; // the order in the file says nothing
  for (const Record& record : card.rig->records) {
    if (record.kind != RecordKind::test_splice || record.of != card.line->name)
      continue;
    if (const auto stated = fact_force(record.facts, fact_names.setting_load))
      if (std::pair one(fact_text(record.facts, fact_names.date), stated->value); !latest || *latest < one)
        latest = std::move(one);
  }
  return latest ? std::optional(latest->second) : std::nullopt;
}

CardHalves card_halves(const CardPiece& card) {
  if (card.cord && card.marks.size() > 1)
    return {{false, card.cord->upper.parts - card.marks.front().from_u.parts},
            {false, card.cord->lower.parts - card.marks.back().from_l.parts}};
  const Halves parts = halves(*card.piece);
  return {card.unit.round(parts.upper), card.unit.round(parts.lower)};
}

std::string halves_differ_words(const CardPiece& card) {
  const auto [upper, lower] = card_halves(card);
  const CardLength more{false, std::abs(upper.parts - lower.parts)};
  if (more.parts == 0)
    return say(PapersPhrase::they_must_be_alike);
  if (more.parts <= card.unit.step)
    return say(PapersPhrase::they_must_be_alike_is, card.amount(more));
  return say(PapersPhrase::more_must_lie, card.amount(more),
             upper.parts > lower.parts ? say(PapersPhrase::aloft) : say(PapersPhrase::below));
}

bool cut_nothing(const CardPiece& card) {
  return card.piece->in_hand && card.piece->in_hand->cut_nothing();
}

std::string cut_step_words(const CardPiece& card) {
  if (cut_nothing(card))
    return say(PapersPhrase::cut_nothing_all_that_is, card.amount(card.cut));
  return say(PapersPhrase::cut_to, card.amount(card.cut));
}

std::vector<std::string> in_hand_lines(const CardPiece& card) {
  if (!card.piece->in_hand)
    return {};
  const InHand& there = *card.piece->in_hand;
  if (there.incomplete)
    return {say(PapersPhrase::in_hand_cut_lacks_input, card.amount(there.stated.value))};
  if (there.longest_x)
    return {say(PapersPhrase::in_hand_it_is_enough, card.amount(there.stated.value),
                card.amount(*there.longest_x))};
  if (there.too_short())
    return {
        say(PapersPhrase::in_hand_too_short_by, card.amount(there.stated.value), card.amount(-there.over))};
  std::vector<std::string> lines{state_words(card, there)};
  if (card.rope() && there.cut_nothing() && !card.cord)
    lines.push_back(halves_words(card));
  for (std::string& line : taper_lines(card, there))
    lines.push_back(std::move(line));
  return lines;
}

} // namespace sheerpole
