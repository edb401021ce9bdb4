#pragma once

#include "backend/backend.hpp"
#include "backend/printed_mark.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace sheerpole {

/// A length on a card: whole millimetres, to which nobody on a bench can be held closer.
struct CardLength {
  bool unknown = false; ///< to be added to X
  std::int64_t millimetres = 0;
};

/// "12998", "X + 1003", "X".
std::string card_text(CardLength length);

/// One mark from both ends. The two add up to the cut of the card.
struct CardMark {
  std::string name;
  CardLength from_aloft;
  CardLength from_below;
};

/// What a card says of one piece. Points into the checked rig.
struct CardPiece {
  const Rig* rig = nullptr;
  const Derived* derived = nullptr;
  const DerivedStay* of_stay = nullptr;
  const Stay* stay = nullptr;
  const Piece* piece = nullptr;
  const LineMaterial* line = nullptr;
  std::size_t item = 0; ///< of the line in the stack
  bool complete = true; ///< every input of the cut is stated
  CardLength cut;
  CardLength body;
  std::int64_t ends = 0;    ///< what the ends use: cut = body + ends + behaviour, as printed
  std::int64_t behaves = 0; ///< what the line does: stretch, bedding
  std::vector<CardMark> marks;
  bool has_dry_fit = false;
  CardLength dry_fit;
  std::vector<DraftReason> draft_reasons;

  bool rope() const { return line->kind == LineMaterial::Kind::rope; }
};

/// The pieces in the order of the rig.
std::vector<CardPiece> card_pieces(const CheckedRig& checked);

} // namespace sheerpole
