#pragma once

#include "backend/card/card_piece.hpp"
#include "backend/page/page_flow.hpp"
#include "plugins/bench-card/mark_rows.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// How much room a card takes: the largest at which it keeps to one page is used.
struct CardLook {
  double row_height = 5.0; ///< of the table of marks, millimetres
  double text = 3.2;       ///< of the steps, em, millimetres
  double small = 2.6;      ///< of the notes
  enum class Finished { in_words, drawn, drawn_with_words };
  Finished finished = Finished::drawn_with_words; ///< the piece as it is when it is made
};

/// Head of a card: what it is and of which side, its line, room for spool, batch and job or what the file
/// says of them, X where the length is that, and in a frame the cut, the body, the dry fit and the state.
/// Of a draft NOT YET stands in place of the cut, and for how many reasons. `low`: it takes less room.
void add_card_head(const CardPiece& card, bool low, PageFlow& page);

/// The piece laid out straight with the numbers of its marks, the cord that it is laid out by below it, and
/// the piece as it is when it is made. Not to scale.
void add_piece_drawings(const CardPiece& card, const CardLook& look, PageFlow& page);

/// What the drawing of a piece laid out straight takes of the page, in millimetres: more with its cord.
double straight_height(const CardPiece& card);

/// The piece laid out straight, of which `all` are the rows. The marks stand at equal distances.
void draw_straight(const CardPiece& card, const std::vector<MarkRow>& all, double width, PaperPoint at,
                   ShapeGroup& into);

/// The marks in two columns with boxes to tick and room for what was made; beside it what must not be
/// missed, the tips, the check by halves and the blanks for X as a number.
void add_marks_block(const CardPiece& card, const CardLook& look, PageFlow& page);

/// STOP with room for three signatures, before the first step that cannot be undone.
void add_stop(const CardPiece& card, const std::string& words, PageFlow& page);

/// A step of work with a box to tick and its number; `to_write`: a line to write on stands behind its
/// words.
void add_step(int number, const std::string& words, bool to_write, double size, PageFlow& page);

/// In place of marks and work on a card that is a draft: each reason with its way out, and a test splice
/// where one would give what is missing.
void add_what_releases(const CardPiece& card, PageFlow& page);

/// In place of the stop and of all that cannot be undone, on the card of a piece that was measured once:
/// what releases the cut.
void add_second_measure(const CardPiece& card, PageFlow& page);

} // namespace sheerpole
