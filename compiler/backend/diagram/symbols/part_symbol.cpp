#include "backend/diagram/symbols/part_symbol.hpp"

#include "backend/diagram/symbols/symbol_shapes.hpp"

#include <algorithm>

namespace sheerpole {

ShapeStyle outline_style() {
  return {0.3, 0.0, {}, 1.0};
}

ShapeStyle rod_style() {
  return {0.7, 0.0, {}, {}};
}

ShapeStyle line_stub_style() {
  return {0.5, 0.0, {}, {}};
}

RectangleShape box_between(PaperPoint a, PaperPoint b, const ShapeStyle& style) {
  return {{std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)}, style, {}};
}

void draw_part_symbol(std::string_view kind, const SymbolPlace& place, ShapeGroup& into) {
  if (draw_end_symbol(kind, place, into) || draw_boat_symbol(kind, place, into) ||
      draw_link_symbol(kind, place, into) || draw_adjuster_symbol(kind, place, into))
    return;
  into.add(LineShape{place.at(0), place.at(1), rod_style(), {}});
  into.add(box_between(place.at(0.2, 2.5), place.at(0.8, -2.5), outline_style()));
}

} // namespace sheerpole
