#pragma once

#include "backend/card/card_piece.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// One row of the table of marks.
struct MarkRow {
  enum class Sort {
    mark,     ///< is made on the line, and has a number
    place,    ///< an end of the cord or a bearing
    not_given ///< would be a mark if the file stated it
  };
  Sort sort = Sort::mark;
  std::string sign; ///< "3" of a mark; U, A, B, L of a place; empty of what is not given
  std::string name; ///< "throat, on the tail"; whose end it is says its half of the table
  /// Inwards from the upper end U of the cord, past it less than nothing; of a piece without a cord from
  /// its cut end aloft.
  CardLength from_u = {};
  CardLength from_l = {}; ///< the same from the knot L, or from the cut end below
  bool by_upper = true;   ///< of the end aloft
  std::optional<MarkKind> kind = {};
  bool in_words = false; ///< of what is not given as a length: the splice says it in words

  bool is_mark() const { return sort == Sort::mark; }
  /// Whether the first of the two is the nearer, by which the mark is made.
  bool u_is_nearer() const;
};

/// The rows along the line, from aloft to deck, marks numbered in that order.
std::vector<MarkRow> mark_rows(const CardPiece& card);

/// The mark of one kind of one end; null when the card has no such mark.
const MarkRow* row_of(const std::vector<MarkRow>& rows, MarkKind kind, bool by_upper);

/// What a row prints in one column of a card from the cord: "648 past", "35 inside", "0", "X - 24".
std::string cord_place(const CardUnit& unit, CardLength place);

/// How far apart two passes may be before a third is laid out: the width of a knot where it is stated, else
/// 5 mm or a quarter of an inch. Common practice, no source.
CardLength apart_at_most(const CardPiece& card);

/// Whether a note to an end is that two ways to its eye allowance are further apart than the limit
/// `eye-ways-apart`: what must not be missed. So many diameters of a splice are a rule for any seat, and
/// say nothing against a test wrap.
bool eye_disagrees(const CardPiece& card, const PieceEnd& end, const Remark& note);
/// Whether the wire of an end goes round a thimble and back into a sleeve.
bool wire_goes_into_sleeve(const CardPiece& card, const PieceEnd& end);
/// The rope that the cut has for the eye of an end, beyond its bearing.
std::string eye_taken(const CardPiece& card, const PieceEnd& end);
/// Whether all that disagrees is so many diameters of a splice, which nobody has wrapped round this seat.
bool eyes_by_rule(const CardPiece& card);
/// What must not be missed of the eyes, a sentence for each end, ends alike in one. Empty when they agree.
std::vector<std::string> eyes_that_disagree(const CardPiece& card);

/// A place on the finished piece where it goes over the tip of a spreader.
struct TipRow {
  std::string sign;      ///< "T1"
  std::string name;      ///< "upper-tip.port, free"
  CardLength from_aloft; ///< from the bearing aloft
  CardLength from_below; ///< from the bearing below; the two add up to the body
  bool assumed = false;  ///< where it goes over rests on a place that nobody measured: there is no number
};

/// From aloft to deck, by the points of its path; empty for a piece that is one of several of its stay, and
/// where an input of its lengths is missing.
std::vector<TipRow> tip_rows(const CardPiece& card);

} // namespace sheerpole
