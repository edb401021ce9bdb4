#include "backend/card/card_piece.hpp"

#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "units/format_length.hpp"
#include "wording/length_words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

/// The nearer end is rounded, the other is what the cut leaves, so that the two add up.
CardMark card_mark(const CardUnit& unit, const BenchMark& mark, CardLength cut) {
  const bool by_aloft = mark.from_upper.unknown == mark.from_lower.unknown
                            ? mark.from_upper.known <= mark.from_lower.known
                            : mark.from_lower.unknown;
  CardMark result;
  result.name = mark_name(mark);
  if (by_aloft) {
    result.from_upper = unit.round(mark.from_upper.known);
    result.from_lower = cut - result.from_upper;
  } else {
    result.from_lower = unit.round(mark.from_lower.known);
    result.from_upper = cut - result.from_lower;
  }
  return result;
}

/// The n-th line of the stack, from 1.
std::size_t line_item(const Stay& stay, int number) {
  int seen = 0;
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (stay.stack[i].kind == StackItem::Kind::line && ++seen == number)
      return i;
  return 0;
}

Length behaviour(const Piece& piece) {
  Length sum;
  for (const Term& term : piece.cut.terms)
    if (term.of_standing_part())
      sum += term.amount;
  return sum;
}

CardPiece card_piece(const CheckedRig& checked, const CardUnit& unit, const DerivedStay& of_stay,
                     const Piece& piece) {
  const Rig& rig = checked.rig();
  CardPiece card;
  card.rig = &rig;
  card.derived = &checked.derived();
  card.of_stay = &of_stay;
  card.stay = &rig[of_stay.stay];
  card.piece = &piece;
  card.line = &rig[piece.material];
  card.item = line_item(*card.stay, piece.number);
  card.unit = unit;
  card.draft_reasons = checked.draft_reasons(piece);
  const PieceSum sum = piece_sum(rig, of_stay, piece);
  card.complete = sum.complete();
  card.cut = unit.round(piece.cut.known(), piece.cut.unknown);
  card.body = unit.round(piece.body.known(), piece.cut.unknown);
  card.behaves = unit.round(behaviour(piece));
  card.ends = {false, card.cut.parts - card.body.parts - card.behaves.parts};
  for (const BenchMark& mark : piece.bench.marks)
    card.marks.push_back(card_mark(unit, mark, card.cut));
  if (piece.bench.dry_fit) {
    card.has_dry_fit = true;
    card.dry_fit = unit.round(piece.bench.dry_fit->known, piece.bench.dry_fit->unknown);
  }
  return card;
}

} // namespace

std::vector<CardPiece> card_pieces(const CheckedRig& checked) {
  const CardUnit unit = card_unit(checked.rig());
  std::vector<CardPiece> cards;
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces)
      cards.push_back(card_piece(checked, unit, stay, piece));
  return cards;
}

std::string side_words(Side side) {
  if (side == Side::centre)
    return "centreline";
  return side == Side::port ? "PORT side" : "STARBOARD side";
}

std::string shown(const std::string& name, const std::string& title) {
  return title.empty() ? name : name + " (" + title + ")";
}

std::vector<std::string> draft_lines(const std::vector<DraftReason>& reasons) {
  struct SameMend {
    std::string mend;
    std::vector<std::string> reasons;
  };
  std::vector<SameMend> groups;
  for (const DraftReason& reason : reasons) {
    auto group = std::find_if(groups.begin(), groups.end(),
                              [&](const SameMend& one) { return one.mend == reason.mend; });
    if (group == groups.end())
      group = groups.insert(groups.end(), {reason.mend, {}});
    if (std::find(group->reasons.begin(), group->reasons.end(), reason.reason) == group->reasons.end())
      group->reasons.push_back(reason.reason);
  }
  std::vector<std::string> lines;
  for (const SameMend& group : groups) {
    lines.push_back(joined(group.reasons, "; ") + led_by(": ", group.mend));
  }
  return lines;
}

std::string stack_words(const CardPiece& card) {
  return joined(card.stay->stack, "  >  ", [&](const StackItem& item) {
    if (item.kind == StackItem::Kind::line)
      return std::string(&item == &card.stay->stack[card.item] ? "THIS PIECE" : "line");
    return (item.count > 1 ? std::to_string(item.count) + " x " : "") + (*card.rig)[item.part].name +
           (item.set_length ? " set to " + card.amount(item.set_length->value) : "");
  });
}

std::string splice_words(const CardPiece& card, const PieceEnd& end) {
  const auto splice = std::find_if(card.rig->splices.begin(), card.rig->splices.end(),
                                   [&](const Splice& one) { return one.name == end.splice; });
  if (end.splice.empty() || splice == card.rig->splices.end())
    return {};
  std::string text = fmt::format("{}, bury {}", splice->name,
                                 card.amount(splice->bury.value.at(card.line->diameter.value)));
  if (splice->bury.value.in_diameters)
    text += fmt::format(" ({} d)", format_number(splice->bury.value.amount));
  if (!splice->taper.empty())
    text += ", taper " + splice->taper;
  text += led_by(", throat ", fact_text(splice->particulars, fact_names.throat));
  if (const std::string locking = fact_text(splice->particulars, fact_names.locking); !locking.empty())
    text += ", " + locking;
  return text;
}

} // namespace sheerpole
