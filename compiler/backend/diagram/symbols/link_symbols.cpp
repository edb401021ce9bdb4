#include "backend/diagram/symbols/symbol_shapes.hpp"

namespace sheerpole {

namespace {

/// Two jaws with their pins at right angles: one seen end on, one from the side.
void draw_toggle(const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.in(0, 2.6), place.at(0.62, -2.6), outline_style()));
  into.add(box_between(place.at(0.5, 1.3), place.at(1, -1.3), outline_style()));
  into.add(LineShape{place.at(0.56, 3.6), place.at(0.56, -3.6), {0.9, 0.0, {}, {}}, {}});
}

/// A pair of flat plates.
void draw_link(const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.in(0, 2.0), place.at(1, -2.0), outline_style()));
  into.add(LineShape{place.in(2.4), place.in(-2.4), {0.13, 0.0, {}, {}}, {}});
}

/// A bow with a pin across its open end.
void draw_shackle(const SymbolPlace& place, ShapeGroup& into) {
  into.add(PolylineShape{{place.at(1, 3.0), place.in(6, 3.0), place.in(2, 2.2), place.in(0, 0.0),
                          place.in(2, -2.2), place.in(6, -3.0), place.at(1, -3.0)},
                         {0.9, 0.0, {}, {}},
                         {}});
  into.add(LineShape{place.in(-0.8, 4.2), place.in(-0.8, -4.2), {0.9, 0.0, {}, {}}, {}});
}

/// A ribbed body between two eyes.
void draw_insulator(const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.at(0), place.at(1), rod_style(), {}});
  into.add(box_between(place.at(0.25, 2.2), place.at(0.75, -2.2), outline_style()));
  for (const double share : {0.35, 0.45, 0.55, 0.65})
    into.add(LineShape{place.at(share, 3.6), place.at(share, -3.6), {0.9, 0.45, {}, {}}, {}});
}

/// A ring seen end on.
void draw_bush(const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.at(0), place.at(1), {0.13, 0.0, {}, {}}, {}});
  into.add(CircleShape{place.at(0.5), 3.4, outline_style(), {}});
  into.add(CircleShape{place.at(0.5), 2.0, outline_style(), {}});
}

/// A bolt with a head and a hole for its split pin.
void draw_pin(const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.at(0), place.at(1), {0.13, 0.0, {}, {}}, {}});
  into.add(box_between(place.at(0.5, 4.2), {place.at(0.5).x + 2.0, place.axis + 4.2}, outline_style()));
  into.add(CircleShape{{place.at(0.5).x + 1.0, place.axis + 3.2}, 0.4, {0.2, 0.0, {}, 0.0}, {}});
}

/// A tube that the line runs through.
void draw_tube(const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.at(0.05, 2.4), place.at(0.95, -2.4), {0.3, 0.0, {1.2, 0.8}, 1.0}));
  into.add(LineShape{place.at(0), place.at(1), line_stub_style(), {}});
}

} // namespace

bool draw_link_symbol(std::string_view kind, const SymbolPlace& place, ShapeGroup& into) {
  if (kind == "toggle")
    draw_toggle(place, into);
  else if (kind == "link")
    draw_link(place, into);
  else if (kind == "shackle")
    draw_shackle(place, into);
  else if (kind == "insulator")
    draw_insulator(place, into);
  else if (kind == "bush")
    draw_bush(place, into);
  else if (kind == "pin")
    draw_pin(place, into);
  else if (kind == "foil" || kind == "cover")
    draw_tube(place, into);
  else
    return false;
  return true;
}

} // namespace sheerpole
