#pragma once

#include "backend/card/card_unit.hpp"
#include "results/checked_rig.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One mark from both ends. The two add up to the cut of the card.
struct CardMark {
  std::string name;
  CardLength from_upper;
  CardLength from_lower;
};

/// What the cards say of one piece, each length rounded once. Points into the checked rig.
struct CardPiece {
  const Rig* rig = nullptr;
  const Derived* derived = nullptr;
  const DerivedStay* of_stay = nullptr;
  const Stay* stay = nullptr;
  const Piece* piece = nullptr;
  const LineMaterial* line = nullptr;
  std::size_t item = 0; ///< of the line in the stack
  CardUnit unit;
  bool complete = true; ///< every input of the cut is stated
  CardLength cut;
  CardLength body;
  CardLength ends;    ///< what the ends use: cut = body + ends + behaviour, as printed
  CardLength behaves; ///< what the line does: stretch, bedding
  std::vector<CardMark> marks;
  bool has_dry_fit = false;
  CardLength dry_fit;
  std::vector<DraftReason> draft_reasons;

  bool rope() const { return line->kind == LineMaterial::Kind::rope; }
  /// The length in a sentence of the card.
  std::string amount(CardLength length) const { return card_amount(unit, length); }
  std::string amount(Length length) const { return card_amount(unit, length); }
};

/// The pieces in the order of the rig.
std::vector<CardPiece> card_pieces(const CheckedRig& checked);

/// "PORT side", "STARBOARD side", "centreline".
std::string side_words(Side side);

/// "thimble-16 (Thimble for 9 mm rope)".
std::string shown(const std::string& name, const std::string& title);

/// Why what is printed may not be cut to: the reasons, those with the same mend together, each once.
std::vector<std::string> draft_lines(const std::vector<DraftReason>& reasons);

/// "thimble-16  >  THIS PIECE  >  deadeye-38  >  lashing-260 set to 160 mm"; another line of the stack is
/// "line".
std::string stack_words(const CardPiece& card);

/// How the end is spliced, with its numbers: "long-bury, bury 648 mm (72 d) + spare 300 mm = 948 mm, taper
/// last third, lock stitch"; empty when no splice is named. `end` is one of the two of the piece.
std::string splice_words(const CardPiece& card, const PieceEnd& end);

} // namespace sheerpole
