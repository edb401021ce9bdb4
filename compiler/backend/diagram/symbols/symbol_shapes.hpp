#pragma once

#include "backend/diagram/symbols/part_symbol.hpp"

namespace sheerpole {

/// Outline of most symbols: thin black, filled white.
ShapeStyle outline_style();
/// A rod or strand seen as a line.
ShapeStyle rod_style();

/// The last bit of the line, where it meets its end fitting.
ShapeStyle line_stub_style();

/// Box between two corners, in any order.
RectangleShape box_between(PaperPoint a, PaperPoint b, const ShapeStyle& style);

/// End fittings (terminal, thimble, deadeye), what belongs to the boat (tang, chainplate, junction), links
/// (toggle, link, shackle, insulator, bush, pin, foil, cover) and adjusters. Each returns false when the
/// kind is none of its own.
bool draw_end_symbol(std::string_view kind, const SymbolPlace& place, ShapeGroup& into);
bool draw_boat_symbol(std::string_view kind, const SymbolPlace& place, ShapeGroup& into);
bool draw_link_symbol(std::string_view kind, const SymbolPlace& place, ShapeGroup& into);
bool draw_adjuster_symbol(std::string_view kind, const SymbolPlace& place, ShapeGroup& into);

} // namespace sheerpole
