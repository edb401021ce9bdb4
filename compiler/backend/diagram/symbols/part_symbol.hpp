#pragma once

#include "backend/drawing/drawing.hpp"
#include "model/part.hpp"
#include "model/stay.hpp"

namespace sheerpole {

/// What of a part its symbol shows: its kind, and what makes it another one of its kind.
struct PartLook {
  PartKind kind = PartKind::link;
  bool tee = false;          ///< it hangs by a bar behind a slotted plate and has no pin there
  bool slot = false;         ///< the plate that takes such a bar
  bool toggle_upper = false; ///< a joint is built into this end of a screw
  bool toggle_lower = false;
  int holes = 0; ///< of a dead-eye or of a plate with a row of holes; 0: not stated
  int hole = 0;  ///< that it is pinned in, from 1 at the shortest; 0: not stated
  bool operator==(const PartLook&) const = default;
};

PartLook look_of(const Part& part, const StackItem& item);

/// Where the symbol of a part stands: from its upper bearing at `left` to its lower bearing at `right`, on
/// the axis of the stay. A symbol is at most `symbol_half_height` above and below the axis. Millimetres.
struct SymbolPlace {
  double left = 0.0;
  double right = 30.0;
  double axis = 0.0;
  bool turned = false; ///< the end that is drawn on the left lies on the right

  /// A place at this share of the way from the end that is drawn on the left, this far above the axis.
  PaperPoint at(double share, double above = 0.0) const {
    return {turned ? right - share * (right - left) : left + share * (right - left), axis - above};
  }
  /// The same by millimetres from that end; negative: from the other end.
  PaperPoint in(double millimetres, double above = 0.0) const {
    const double from_left = millimetres < 0 ? right - left + millimetres : millimetres;
    return {turned ? right - from_left : left + from_left, axis - above};
  }
};

inline constexpr double symbol_half_height = 4.5;

/// Draws a schematic outline for a part. A kind without an outline of its own gets a plain box.
/// Parts that take the line or belong to the boat are drawn for an aloft end: the line, or the pin, lies on
/// the right.
void draw_part_symbol(const PartLook& look, const SymbolPlace& place, ShapeGroup& into);

} // namespace sheerpole
