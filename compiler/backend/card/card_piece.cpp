#include "plugins/bench-card/card_piece.hpp"

namespace sheerpole {

namespace {

/// Rounds half away from zero.
std::int64_t whole(Tenths tenths) {
  const std::int64_t half = tenths.count < 0 ? -5 : 5;
  return (tenths.count + half) / 10;
}

CardLength card_length(bool unknown, Tenths tenths) {
  return {unknown, whole(tenths)};
}

/// The nearer end is rounded, the other is what the cut leaves, so that the two add up.
CardMark card_mark(const BenchMark& mark, Tenths cut, CardLength printed_cut) {
  const PrintedMark printed = printed_mark(mark, cut);
  CardMark result;
  result.name = mark.name;
  const bool by_aloft =
      !printed.from_aloft.unknown &&
      (printed.from_below.unknown || printed.from_aloft.tenths <= printed.from_below.tenths);
  if (by_aloft) {
    result.from_aloft = card_length(false, printed.from_aloft.tenths);
    result.from_below = {printed_cut.unknown, printed_cut.millimetres - result.from_aloft.millimetres};
  } else {
    result.from_below = card_length(false, printed.from_below.tenths);
    result.from_aloft = {printed_cut.unknown, printed_cut.millimetres - result.from_below.millimetres};
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

CardPiece card_piece(const CheckedRig& checked, const DerivedStay& of_stay, const Piece& piece) {
  const Rig& rig = checked.rig();
  CardPiece card;
  card.rig = &rig;
  card.derived = &checked.derived();
  card.of_stay = &of_stay;
  card.stay = &rig[of_stay.stay];
  card.piece = &piece;
  card.line = &rig[piece.material];
  card.item = line_item(*card.stay, piece.number);
  card.draft_reasons = checked.draft_reasons(piece);
  const PieceSum sum = piece_sum(rig, of_stay, piece);
  card.complete = sum.body_complete && sum.cut_complete;
  card.cut = card_length(sum.unknown, sum.cut());
  card.body = card_length(sum.unknown, sum.body());
  Tenths behaves;
  for (const SumRow& row : sum.section("cut").rows)
    if (row.term->of_standing_part)
      behaves += row.amount;
  card.behaves = whole(behaves);
  card.ends = card.cut.millimetres - card.body.millimetres - card.behaves;
  for (const BenchMark& mark : piece.bench.marks)
    card.marks.push_back(card_mark(mark, sum.cut(), card.cut));
  if (piece.bench.dry_fit) {
    card.has_dry_fit = true;
    card.dry_fit = card_length(piece.bench.dry_fit->unknown, Tenths::of(piece.bench.dry_fit->known));
  }
  return card;
}

} // namespace

std::string card_text(CardLength length) {
  const std::string amount =
      std::to_string(length.millimetres < 0 ? -length.millimetres : length.millimetres);
  if (!length.unknown)
    return (length.millimetres < 0 ? "-" : "") + amount;
  if (length.millimetres == 0)
    return "X";
  return (length.millimetres < 0 ? "X - " : "X + ") + amount;
}

std::vector<CardPiece> card_pieces(const CheckedRig& checked) {
  std::vector<CardPiece> cards;
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces)
      cards.push_back(card_piece(checked, stay, piece));
  return cards;
}

} // namespace sheerpole
