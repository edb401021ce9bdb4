#pragma once

#include "backend/card/card_piece.hpp"
#include "backend/page/page_flow.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What a mark of the layout is, where something is done with it by its number.
enum class CordMark { other, taper_begins, throat_on_tail, throat_on_standing_part, tail_comes_out };

/// One row of the layout from a cord: a mark of the piece, or an end of the cord or a bearing, which is a
/// place on the cord and no mark.
struct CordRow {
  std::string sign; ///< "3" of a mark, U, A, B, L of a place
  bool mark = true;
  std::string name;
  CardLength from_u; ///< inwards; past the end less than nothing
  CardLength from_l;
  bool by_upper = true; ///< which of the two is the nearer
  CordMark what = CordMark::other;
};

/// How much room a card takes: the largest at which it keeps to one page is used.
struct CordLook {
  double row_height = 4.5; ///< of the table of marks, millimetres
  double text = 2.8;       ///< of the steps, em, millimetres
  bool finished = true;    ///< the piece with its eyes made is drawn as well
};

/// The rows along the rope, from aloft to deck, marks numbered in that order. `card` has a cord. Where a
/// tail comes out is a mark as well, as far inside the throat as the tail is long.
std::vector<CordRow> cord_rows(const CardPiece& card);

/// The row of one kind of mark of one end; null when the card has no such mark.
const CordRow* row_of(const std::vector<CordRow>& rows, CordMark what, bool by_upper);

/// What a row prints in one column: "648 past", "35 inside", "0", "X - 24".
std::string cord_place(const CardUnit& unit, CardLength place);

/// How far apart two passes may be before a third is laid out: the width of a knot where it is stated, else
/// 5 mm or a quarter of an inch. Common practice, no source.
CardLength apart_at_most(const CardPiece& card);

/// Head of the card with X defined in its box, then the cut and the body of the piece.
void add_cord_head(const CardPiece& card, const std::string& known, PageFlow& page);
/// The piece with the cord beside it and as it is when its eyes are made, the marks in two columns, the
/// check by halves and the blanks for X as a number.
void add_cord_marks(const CardPiece& card, const CordLook& look, PageFlow& page);
/// STOP with room for two signatures, in one row.
void add_cord_stop(const std::string& words, PageFlow& page);
/// What is done with the cord before anything is cut.
std::vector<std::string> cord_steps(const CardPiece& card);
/// Before the dry fit of a rope: which marks are brought together.
std::string cord_eyes_step(const CardPiece& card);
/// How the ends of a rope are spliced, by the numbers of the marks; ends alike in one step.
std::vector<std::string> cord_splice_steps(const CardPiece& card);

} // namespace sheerpole
