#include "backend/diagram/symbols/symbol_shapes.hpp"

namespace sheerpole {

namespace {

/// An eye on the pin and a barrel that the wire runs into.
void draw_terminal(const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.in(14), place.at(1), line_stub_style(), {}});
  into.add(PolygonShape{{place.in(0, 1.6), place.in(6, 1.6), place.in(8, 1.2), place.in(16, 1.2),
                         place.in(16, -1.2), place.in(8, -1.2), place.in(6, -1.6), place.in(0, -1.6)},
                        outline_style(),
                        {}});
  into.add(CircleShape{place.in(0), 2.4, outline_style(), {}});
}

/// A pointed eye that the rope lies round.
void draw_thimble(const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.in(12), place.at(1), line_stub_style(), {}});
  into.add(PolygonShape{{place.in(0.8, 2.9), place.in(13), place.in(0.8, -2.9)}, {0.7, 0.0, {}, 1.0}, {}});
  into.add(CircleShape{place.in(0), 3.0, {0.7, 0.0, {}, 1.0}, {}});
}

/// A round block with holes for the lanyard.
void draw_deadeye(const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.in(8), place.at(1), line_stub_style(), {}});
  into.add(CircleShape{place.in(4.4), 4.2, outline_style(), {}});
  for (const double above : {-2.2, 0.0, 2.2})
    into.add(CircleShape{place.in(above == 0.0 ? 2.4 : 3.4, above), 0.6, {0.2, 0.0, {}, 0.0}, {}});
}

} // namespace

bool draw_end_symbol(std::string_view kind, const SymbolPlace& place, ShapeGroup& into) {
  if (kind == "terminal")
    draw_terminal(place, into);
  else if (kind == "thimble")
    draw_thimble(place, into);
  else if (kind == "deadeye")
    draw_deadeye(place, into);
  else
    return false;
  return true;
}

} // namespace sheerpole
