#include "backend/diagram/symbols/part_symbol.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// Outline of most symbols: thin black, filled white.
ShapeStyle outline_style() {
  return {0.3, 0.0, {}, 1.0};
}

/// A rod or strand seen as a line.
ShapeStyle rod_style() {
  return {0.7, 0.0, {}, {}};
}

/// The last bit of the line, where it meets its end fitting.
ShapeStyle line_stub_style() {
  return {0.5, 0.0, {}, {}};
}

/// Box between two corners, in any order.
RectangleShape box_between(PaperPoint a, PaperPoint b, const ShapeStyle& style) {
  return {{std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)}, style, {}};
}

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

/// An open body with a threaded stud in each end.
void draw_turnbuckle(const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.at(0.18, 2.6), place.at(0.82, -2.6), outline_style()));
  into.add(box_between(place.at(0.26, 1.6), place.at(0.74, -1.6), outline_style()));
  for (const double end : {0.0, 1.0}) {
    const double inner = end == 0.0 ? 0.36 : 0.64;
    into.add(box_between(place.at(end, 0.9), place.at(inner, -0.9), outline_style()));
    for (int i = 1; i <= 4; ++i) {
      const double share = inner + (end - inner) * 0.06 * i;
      into.add(LineShape{place.at(share, 0.9), place.at(share, -0.9), {0.2, 0.0, {}, {}}, {}});
    }
  }
}

/// Passes of cord between two bearings.
void draw_lashing(const SymbolPlace& place, ShapeGroup& into) {
  for (int i = -2; i <= 2; ++i)
    into.add(LineShape{place.in(0.4, 1.1 * i),
                       place.in(-0.4, 1.1 * i + (i % 2 == 0 ? 0.7 : -0.7)),
                       {0.35, 0.0, {}, {}},
                       {}});
}

/// Two blocks with parts of rope between them.
void draw_tackle(const SymbolPlace& place, ShapeGroup& into) {
  for (const double above : {-1.5, -0.5, 0.5, 1.5})
    into.add(LineShape{place.in(5, 1.4 * above), place.in(-5, 1.4 * above), {0.3, 0.0, {}, {}}, {}});
  for (const double end : {1.0, -1.0}) {
    into.add(LineShape{place.at(end > 0 ? 0.0 : 1.0), place.in(end * 5), rod_style(), {}});
    into.add(CircleShape{place.in(end * 5), 3.0, outline_style(), {}});
    into.add(CircleShape{place.in(end * 5), 0.6, {0.2, 0.0, {}, 0.0}, {}});
  }
}

/// A bar with a handle that folds over its middle.
void draw_lever(const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.at(0, 1.4), place.at(1, -1.4), outline_style()));
  into.add(PolygonShape{{place.at(0.25, 1.4), place.at(0.8, 4.4), place.at(0.84, 3.0), place.at(0.35, 0.2)},
                        outline_style(),
                        {}});
  into.add(CircleShape{place.at(0.3, 0.5), 0.8, {0.2, 0.0, {}, 0.0}, {}});
}

/// A plate with a row of holes.
void draw_hole_adjuster(const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.at(0, 2.0), place.at(1, -2.0), outline_style()));
  for (int i = 1; i <= 7; ++i)
    into.add(CircleShape{place.at(i / 8.0), 0.7, {0.2, 0.0, {}, i == 4 ? 0.0 : 1.0}, {}});
}

/// A barrel and its rod.
void draw_cylinder(const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.at(0.5, 0.9), place.at(1, -0.9), outline_style()));
  into.add(box_between(place.at(0, 3.0), place.at(0.65, -3.0), outline_style()));
  into.add(LineShape{place.at(0.4, 3.0), place.at(0.4, -3.0), {0.5, 0.0, {}, {}}, {}});
}

struct Symbol {
  PartKind kind;
  void (*draw)(const SymbolPlace& place, ShapeGroup& into);
};

/// End fittings, what belongs to the boat, links, adjusters.
constexpr Symbol symbols[] = {
    {PartKind::terminal, draw_terminal},
    {PartKind::thimble, draw_thimble},
    {PartKind::deadeye, draw_deadeye},
    {PartKind::tang, draw_tang},
    {PartKind::chainplate, draw_chainplate},
    {PartKind::junction, draw_junction},
    {PartKind::toggle, draw_toggle},
    {PartKind::link, draw_link},
    {PartKind::shackle, draw_shackle},
    {PartKind::insulator, draw_insulator},
    {PartKind::bush, draw_bush},
    {PartKind::pin, draw_pin},
    {PartKind::foil, draw_tube},
    {PartKind::cover, draw_tube},
    {PartKind::turnbuckle, draw_turnbuckle},
    {PartKind::lashing, draw_lashing},
    {PartKind::tackle, draw_tackle},
    {PartKind::lever, draw_lever},
    {PartKind::hole_adjuster, draw_hole_adjuster},
    {PartKind::cylinder, draw_cylinder},
};

} // namespace

void draw_part_symbol(PartKind kind, const SymbolPlace& place, ShapeGroup& into) {
  for (const Symbol& symbol : symbols)
    if (symbol.kind == kind)
      return symbol.draw(place, into);
  into.add(LineShape{place.at(0), place.at(1), rod_style(), {}});
  into.add(box_between(place.at(0.2, 2.5), place.at(0.8, -2.5), outline_style()));
}

} // namespace sheerpole
