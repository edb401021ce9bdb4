#pragma once

#include "backend/card/card_piece.hpp"
#include "backend/page/page_flow.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One row of the layout from a cord: a mark of the piece, or an end of the cord or a bearing, which is a
/// place on the cord and no mark.
struct CordRow {
  std::string sign; ///< "3" of a mark, U, A, B, L of a place
  bool mark = true;
  std::string name;
  CardLength from_u; ///< inwards; past the end less than nothing
  CardLength from_l;
  bool by_upper = true; ///< which of the two is the nearer
};

/// The rows along the rope, from aloft to deck. `card` has a cord.
std::vector<CordRow> cord_rows(const CardPiece& card);

/// What a row prints in one column: "648 past", "35 inside", "0", "X - 24".
std::string cord_place(const CardUnit& unit, CardLength place);

/// How far apart two passes may be before a third is laid out: the width of a knot where it is stated, else
/// 5 mm or a quarter of an inch. Common practice, no source.
CardLength apart_at_most(const CardPiece& card);

/// Head of the card with X defined in its box, then the cut and the body of the piece.
void add_cord_head(const CardPiece& card, const std::string& known, PageFlow& page);
/// The piece with the cord beside it, the marks in two columns, and the blanks for X as a number.
void add_cord_marks(const CardPiece& card, PageFlow& page);
/// STOP with room for two signatures, in one row.
void add_cord_stop(const std::string& words, PageFlow& page);
/// What is done with the cord before anything is cut.
std::vector<std::string> cord_steps(const CardPiece& card);

} // namespace sheerpole
