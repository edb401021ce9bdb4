#pragma once

#include "plugins/bench-card/card_blocks.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Where one end lies on the drawing.
struct EndPlace {
  const CardPiece& card;
  WhichEnd end = WhichEnd::upper;
  double edge = 0.0; ///< of the page
  double way = 1.0;  ///< 1 where the line runs to the right from it, -1 where to the left
  double y = 0.0;

  bool upper() const { return end == WhichEnd::upper; }
  const PieceEnd& made() const { return upper() ? card.piece->upper : card.piece->lower; }
  double at(double along) const { return edge + way * along; }
};

/// How far the drawing of an end reaches along the line, in millimetres of the paper: to where its tail
/// comes out.
inline constexpr double out = 60.0;

/// An eye with what it bears on, its bury and its marks; where the end is bare, or nothing states its
/// splice, the line alone. The line goes on to `to_middle`.
void draw_eye(const EndPlace& at, const std::vector<MarkRow>& rows, double to_middle, ShapeGroup& into);

/// A terminal closed on its wire: the sleeve, and the wire inside it dashed to as deep as it goes.
void draw_terminal(const EndPlace& at, const std::vector<MarkRow>& rows, double to_middle,
                   ShapeGroup& into);

/// What stands below one end: its part and where that is, then its splice or terminal.
std::vector<std::string> words_of_end(const EndPlace& at, const std::vector<MarkRow>& rows);

} // namespace sheerpole
