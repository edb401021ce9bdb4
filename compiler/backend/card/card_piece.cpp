#include "backend/card/card_piece.hpp"

#include "backend/piece_sum.hpp"

namespace sheerpole {

namespace {

/// The nearer end is rounded, the other is what the cut leaves, so that the two add up.
CardMark card_mark(const CardUnit& unit, const BenchMark& mark, CardLength cut) {
  const bool by_aloft = mark.from_upper.unknown == mark.from_lower.unknown
                            ? mark.from_upper.known <= mark.from_lower.known
                            : mark.from_lower.unknown;
  CardMark result;
  result.name = mark.name;
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
    if (term.of_standing_part)
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
  card.complete = sum.body_complete && sum.cut_complete;
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

} // namespace sheerpole
