#pragma once

#include "backend/backend.hpp"

#include <vector>

namespace sheerpole {

/// One piece with its worked sum. Points into the checked rig.
struct ListedPiece {
  const DerivedStay* derived = nullptr;
  const Stay* stay = nullptr;
  const Piece* piece = nullptr;
  PieceSum sum;
  std::vector<DraftReason> draft_reasons;

  bool draft() const { return !draft_reasons.empty(); }
  bool complete() const { return sum.body_complete && sum.cut_complete; }
  /// A number that can be added up: neither X nor incomplete.
  bool has_length() const { return complete() && !sum.unknown; }
};

/// What is listed under one number: a piece, or a port and a starboard piece that are equal within the
/// tolerance that the boat states.
struct CutListBlock {
  std::vector<ListedPiece> pieces; ///< one or two, in the order of the rig
  bool same_rows = true;           ///< two: both print the same rows, totals and ranges

  bool draft() const;
};

/// The pieces in the order of the rig. A pair is one block only when the boat states a pair tolerance, both
/// lengths are known and complete, line and ends are the same, and neither body nor cut differ by more than
/// it.
std::vector<CutListBlock> cut_list_blocks(const CheckedRig& checked);

/// How well the length of the piece is known; null when no bound is stated, and for a piece with a length
/// of its own, which takes nothing of what the stay is off by.
const Uncertainty* range_of(const ListedPiece& listed);

/// Sum of the printed cut lengths of one line.
struct LineTotal {
  const LineMaterial* line = nullptr;
  int pieces = 0; ///< that are in the sum
  int drafts = 0; ///< of them
  Tenths length;
  std::vector<const ListedPiece*> not_summed; ///< of unknown or incomplete length
};

/// One a line that is used, in the order of the rig's lines.
std::vector<LineTotal> line_totals(const CheckedRig& checked, const std::vector<CutListBlock>& blocks);

} // namespace sheerpole
