#include "plugins/emergency-splice-card/spare_line.hpp"

#include "calculate/facts.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// What one end uses of the cut: the terms that are named after it.
Length used_at(const Piece& piece, std::string_view where) {
  Length used;
  for (const Term& term : piece.cut.terms)
    if (!term.of_standing_part && term.name.ends_with(where))
      used += term.amount;
  return used;
}

Length behaviour(const Piece& piece) {
  Length sum;
  for (const Term& term : piece.cut.terms)
    if (term.of_standing_part)
      sum += term.amount;
  return sum;
}

/// The cut as far as it is known, to compare pieces by.
Length about(const CardPiece& card) {
  const Length known = card.piece->cut.known();
  if (!card.piece->cut.unknown)
    return known;
  const auto estimate = fact_length(card.stay->particulars, "estimate");
  return estimate ? known + estimate->value : Length{};
}

void finish(SpareLine& spare) {
  for (const CardPiece& card : spare.pieces)
    if (spare.longest.piece == nullptr || about(card) > about(spare.longest))
      spare.longest = card;
  const CardPiece& card = spare.longest;
  const Length aloft = used_at(*card.piece, " aloft");
  const Length below = used_at(*card.piece, " below");
  spare.end_again = card.unit.round(std::max(aloft, below));
  spare.to_carry = card.cut + spare.end_again;
  spare.cut_beyond_x = card.unit.round(aloft + below + behaviour(*card.piece), true);
  for (std::size_t i = 0; i < card.marks.size(); ++i) {
    const BenchMark& mark = card.piece->bench.marks[i];
    if (mark.name.find(" aloft") != std::string::npos)
      spare.first.push_back(card.marks[i]);
    else
      // From the first bearing the far cut end lies at X, what the line does and what this end uses.
      spare.second.push_back(
          {mark.name, card.unit.round(behaviour(*card.piece) + below - mark.from_lower.known, true)});
  }
}

} // namespace

std::vector<SpareLine> spare_lines(const CheckedRig& checked) {
  std::vector<SpareLine> spares;
  for (CardPiece& card : card_pieces(checked)) {
    if (card.line->kind != LineMaterial::Kind::rope && card.line->kind != LineMaterial::Kind::wire)
      continue;
    auto found = std::find_if(spares.begin(), spares.end(),
                              [&](const SpareLine& one) { return one.pieces.front().line == card.line; });
    if (found == spares.end())
      found = spares.insert(spares.end(), SpareLine{});
    found->pieces.push_back(std::move(card));
  }
  for (SpareLine& spare : spares)
    finish(spare);
  return spares;
}

} // namespace sheerpole
