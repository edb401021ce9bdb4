#pragma once

#include "plugins/bench-card/card_blocks.hpp"
#include "plugins/bench-card/card_ink.hpp"

namespace sheerpole {

/// Half of what a rope is drawn wide, in millimetres of the paper.
inline constexpr double rope_half = 1.3;

/// A round mark is made on the line, a square one is a place on the cord.
void draw_sign(ShapeGroup& into, const MarkRow& row, PaperPoint at, double half = 2.0);

/// Where the drawing leaves out most of the line.
void draw_break(ShapeGroup& into, double x, double y);

/// The strokes of a braid, inside a band that is drawn already.
void draw_braid(double left, double right, double y, ShapeGroup& into);

/// The line from one place to another: a rope as a band with strokes of its braid, a wire as one stroke, a
/// chain link by link.
void draw_line(const CardPiece& card, double left, double right, double y, ShapeGroup& into);

/// An arrow with a head at each end.
void draw_arrow(ShapeGroup& into, double left, double right, double y);

} // namespace sheerpole
