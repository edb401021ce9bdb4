#pragma once

#include "backend/card/card_unit.hpp"
#include "backend/not_yet.hpp"
#include "backend/paper_identity.hpp"
#include "calculate/cut/whole_links.hpp"
#include "results/checked_rig.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// One mark from both ends. The two add up to the cut of the card.
struct CardMark {
  std::string name;
  CardLength from_upper;
  CardLength from_lower;
  WhichEnd end = WhichEnd::upper; ///< whose mark it is: the nearer one
  // Of a piece whose length is X, on the cord: inwards from U and from L, past them less than nothing. The
  // two add up to X.
  CardLength from_u = {};
  CardLength from_l = {};
};

/// Where the cord that keeps X lies along a piece, as its card prints it.
struct CardCord {
  std::string where;         ///< "cord orange, 4 knots"
  CardLength upper;          ///< the bearing aloft, inside U
  CardLength lower;          ///< the bearing below, inside L: U to L less the two is the body
  CardLength drawn_in_upper; ///< rope outside the bearing that the splice draws in
  CardLength drawn_in_lower;
  CardLength behaves;         ///< laid out past the bearing below for what the line does
  CardLength pins_upper;      ///< the pin aloft, inside U
  CardLength pins_lower;      ///< the pin below, inside L
  std::optional<Force> pull;  ///< with which the cord was marked
  std::optional<Length> knot; ///< width of the knot
};

/// What the cards say of one piece. What other papers have in tenths of a millimetre is rounded from those,
/// any other length from what was worked out; of each sum one number is what the others leave. Points into
/// the checked rig.
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
  /// Of a chain whose links can be counted: cut and body are the length of these.
  std::optional<WholeLinks> links = {};
  CardLength worked_out = {}; ///< with `links`: the cut before it was made whole links
  std::vector<CardMark> marks;
  bool has_dry_fit = false;
  CardLength dry_fit;
  std::optional<CardCord> cord; ///< of a piece whose length is X
  std::vector<DraftReason> draft_reasons;
  PieceState state = PieceState::not_yet;
  std::string state_line = {};           ///< what is said of it
  std::string stamp = {};                ///< the same in two words
  bool settled = false;                  ///< READY, with nothing open about its length
  std::vector<DraftReason> held_by = {}; ///< CheckedRig::held_by()

  /// Nothing may be cut to this card.
  bool draft() const { return !draft_reasons.empty() || !complete; }
  /// CheckedRig::measure_again(): its card goes as far as the dry fit, which is a second way to measure it,
  /// and nothing is cut, opened or closed to it.
  bool measure_again() const { return !draft() && !held_by.empty(); }
  /// Else no paper shows its cut as a number.
  bool may_be_cut() const { return !draft() && held_by.empty(); }
  /// What the piece waits for where it may not be cut.
  const std::vector<DraftReason>& waits_for() const { return draft() ? draft_reasons : held_by; }
  bool rope() const { return line->kind == LineMaterial::Kind::rope; }
  bool chain() const { return line->kind == LineMaterial::Kind::chain; }
  /// Whether its end aloft goes into a terminal to a known depth, mark 2, so that it can be closed first.
  bool closed_aloft() const {
    return marks.size() > 1 && piece->bench.marks[1].kind == MarkKind::mouth_of_terminal &&
           piece->bench.marks[1].end == WhichEnd::upper;
  }
  /// Whether the body of a wire is measured from mouth to mouth: a terminal at both ends whose depth is
  /// known. Else its lengths are from bearing to bearing.
  bool mouth_to_mouth() const;
  /// Whether the cut rests on a drawing, of a mast that may not be up yet.
  bool from_drawing() const { return may_be_cut() && state == PieceState::not_measured; }
  /// The length in a sentence of the card.
  std::string amount(CardLength length) const { return card_amount(unit, length); }
  std::string amount(Length length) const { return card_amount(unit, length); }
  /// The same on a paper of several stays, where X is said of whom: "X(cap-shroud.port) + 1003 mm".
  std::string amount_of_stay(CardLength length) const;
  /// The cut, whose length is written so, as other papers than the card itself say it: of a chain by its
  /// links, "70 links of 28 mm, 1960 mm".
  std::string cut_words(const std::string& length) const;
  /// By how much the links are off what was worked out, and what takes that up. Only with `links`.
  std::string links_off() const;
  /// By how much they are off, as printed: more than nothing when they are longer.
  CardLength links_longer() const { return cut - worked_out; }
  /// What a calculation has to say, with its lengths in the unit of the card.
  std::string spoken(const Remark& remark) const;
  std::vector<std::string> spoken(const std::vector<Remark>& remarks) const;
};

/// Whether a piece goes into a terminal at both ends, each to a known depth.
bool mouth_to_mouth(const Piece& piece);

/// The adjusters of its stay as they are set when the stay hangs as worked out: of a chain that goes by its
/// links the first takes up what these are off, where it reaches so far.
std::vector<TakeUp> adjusters_as_hung(const CardPiece& card);
/// What an item of the stack is set to then; nothing where it is no adjuster.
std::optional<Length> set_as_hung(const CardPiece& card, std::size_t item);

/// The pieces in the order of the rig.
std::vector<CardPiece> card_pieces(const CheckedRig& checked);
std::vector<CardPiece> card_pieces(const CheckedRig&&) = delete; ///< they point into it

/// The reading whose knot or mark keeps X of a stay; null when no reading does.
const Reading* reading_of_x(const Stay& stay, const DerivedStay& derived);

/// What X is on a paper about one piece: "X = cord orange, 4 knots: from its upper end U to its knot L."
/// and what lies between its ends and the pins, a sentence each. Empty for a piece whose length is a
/// number.
std::vector<std::string> x_words(const CardPiece& card);

/// Whether the file says that it is put on while the mast lies.
bool rigged_lying(const Stay& stay);

/// "PORT side", "STARBOARD side", "centreline".
std::string side_words(Side side);

/// "thimble-16 (Thimble for 9 mm rope)".
std::string shown(const std::string& name, const std::string& title);

/// "thimble-16  >  THIS PIECE  >  deadeye-38  >  lashing-260 set to 160 mm"; another line of the stack is
/// "line".
std::string stack_words(const CardPiece& card);

/// How the end is spliced, with its numbers: "long-bury, bury 648 mm (72 d) + spare 300 mm = 948 mm, taper
/// last third, lock stitch"; of a bury that does not state its taper or what locks it, that. Empty when no
/// splice is named. `end` is one of the two of the piece.
std::string splice_words(const CardPiece& card, const PieceEnd& end);

} // namespace sheerpole
