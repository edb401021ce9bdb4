#include "backend/diagram/symbols/symbol_shapes.hpp"

namespace sheerpole {

namespace {

ShapeStyle structure_style() {
  return {0.3, 0.0, {}, 0.75};
}

/// A strap that leaves the mast wall at a slant.
void draw_tang(const SymbolPlace& place, ShapeGroup& into) {
  into.add(
      box_between(place.in(0, symbol_half_height), place.in(3, -symbol_half_height), structure_style()));
  into.add(PolygonShape{{place.in(3, 3.8), place.in(9, 1.8), place.at(1, 1.8), place.at(1, -1.8),
                         place.in(9, -1.8), place.in(3, 0.2)},
                        outline_style(),
                        {}});
}

/// A plate that comes through the deck.
void draw_chainplate(const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.in(0, 1.8), place.at(1, -1.8), outline_style()));
  into.add(
      box_between(place.in(5, symbol_half_height), place.in(8, -symbol_half_height), structure_style()));
}

/// A plate that several stays meet at.
void draw_junction(const SymbolPlace& place, ShapeGroup& into) {
  into.add(PolygonShape{
      {place.at(1, 1.4), place.at(1, -1.4), place.in(4, -4.2), place.in(4, 4.2)}, outline_style(), {}});
  for (const double above : {-2.4, 2.4})
    into.add(CircleShape{place.in(6, above), 0.8, outline_style(), {}});
}

} // namespace

bool draw_boat_symbol(std::string_view kind, const SymbolPlace& place, ShapeGroup& into) {
  if (kind == "tang")
    draw_tang(place, into);
  else if (kind == "chainplate")
    draw_chainplate(place, into);
  else if (kind == "junction")
    draw_junction(place, into);
  else
    return false;
  return true;
}

} // namespace sheerpole
