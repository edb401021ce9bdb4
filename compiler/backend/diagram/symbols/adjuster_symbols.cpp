#include "backend/diagram/symbols/symbol_shapes.hpp"

namespace sheerpole {

namespace {

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

} // namespace

bool draw_adjuster_symbol(std::string_view kind, const SymbolPlace& place, ShapeGroup& into) {
  if (kind == "turnbuckle")
    draw_turnbuckle(place, into);
  else if (kind == "lashing")
    draw_lashing(place, into);
  else if (kind == "tackle")
    draw_tackle(place, into);
  else if (kind == "lever")
    draw_lever(place, into);
  else if (kind == "hole-adjuster")
    draw_hole_adjuster(place, into);
  else if (kind == "cylinder")
    draw_cylinder(place, into);
  else
    return false;
  return true;
}

} // namespace sheerpole
