#pragma once

#include "backend/backend.hpp"
#include "backend/tenths.hpp"
#include "backend/text_page.hpp"
#include "calculate/cut/whole_links.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One piece with its worked sum. Points into the checked rig.
struct ListedPiece {
  const DerivedStay* derived = nullptr;
  const Stay* stay = nullptr;
  const Piece* piece = nullptr;
  PieceSum sum;
  std::vector<DraftReason> draft_reasons;
  std::string state = {};                ///< the line that says it
  std::string stamp = {};                ///< the same in two words
  std::vector<DraftReason> held_by = {}; ///< CheckedRig::held_by()

  /// How the list calls its X: "X(cap-shroud.port)".
  std::string x() const { return x_of_stay(stay->name); }
  bool draft() const { return !draft_reasons.empty(); }
  bool complete() const { return sum.complete(); }
  /// Else no paper shows its cut.
  bool may_be_cut() const { return held_by.empty() && complete(); }
  /// A number that can be added up: neither X nor incomplete.
  bool has_length() const { return complete() && !sum.unknown; }
};

/// What is listed under one number: a piece, or a port and a starboard piece that are equal within the
/// tolerance that the boat states.
struct CutListBlock {
  std::vector<ListedPiece> pieces; ///< one or two, in the order of the rig
  bool same_rows = true;           ///< two: both print the same rows, totals and ranges

  bool draft() const;
  bool may_be_cut() const; ///< each of them
};

/// The pieces in the order of the rig. A pair is one block only when the boat states a pair tolerance, both
/// lengths are known and complete, line and ends are the same, and neither body nor cut differ by more than
/// it.
std::vector<CutListBlock> cut_list_blocks(const CheckedRig& checked);

/// What a chain is cut to in links; nothing of any other line, and where its length or its pitch is not
/// known.
std::optional<WholeLinks> links_of(const Rig& rig, const ListedPiece& listed);

/// Whether the length of the piece is chosen and does not follow from the pins.
bool has_own_length(const ListedPiece& listed);

/// How well the length of the piece is known; null when no bound is stated, and for a piece with a length
/// of its own, which takes nothing of what the stay is off by.
const Uncertainty* range_of(const ListedPiece& listed);

/// Sum of the printed cut lengths of one line.
struct LineTotal {
  const LineMaterial* line = nullptr;
  int pieces = 0; ///< that are in the sum
  int drafts = 0; ///< of them
  int held = 0;   ///< of them, NOT YET to be cut: drafts and what is to be measured again
  Tenths length;
  std::vector<const ListedPiece*> not_summed; ///< of unknown or incomplete length
};

/// One a line that is used, in the order of the rig's lines.
std::vector<LineTotal> line_totals(const CheckedRig& checked, const std::vector<CutListBlock>& blocks);

/// For people, at most 100 columns wide as long as no single name is wider.
std::string cut_list_text(const CheckedRig& checked, const std::vector<CutListBlock>& blocks);

/// One flat table, one row a term and one a total.
std::string cut_list_csv(const CheckedRig& checked, const std::vector<CutListBlock>& blocks);

/// Everything; the keys are described in docs/backends/cut-list.md.
std::string cut_list_json(const CheckedRig& checked, const std::vector<CutListBlock>& blocks);

/// What the bench wants to know of one piece: its marks from both ends, the dry fit, the sum by hand, how
/// well it is known and what is left out. `of_several` names the piece in the heading.
void print_bench(const CheckedRig& checked, const ListedPiece& listed, bool of_several, TextPage& page);

/// One numbered block of the cut list: what the piece is, its ends, take-up, and the worked sum.
void print_block(const CheckedRig& checked, const CutListBlock& block, int number, TextPage& page);

/// The pieces to cut, each with its worked sum: as text for the bench, as a flat table and as JSON.
struct CutList final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
