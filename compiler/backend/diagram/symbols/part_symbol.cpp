#include "backend/diagram/symbols/part_symbol.hpp"

#include "calculate/facts.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

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

constexpr double thin = 0.2;

/// A bar behind a plate, which is seen on its edge with the neck in its slot, and the barrel.
void draw_tee_terminal(const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.in(15), place.at(1), line_stub_style(), {}});
  into.add(box_between(place.in(1.4, 0.8), place.in(8, -0.8), outline_style()));
  into.add(box_between(place.in(7, 1.3), place.in(16, -1.3), outline_style()));
  into.add(box_between(place.in(0, 3.2), place.in(1.5, -3.2), {0.3, 0.0, {}, 0.0}));
  for (const double side : {1.0, -1.0})
    into.add(box_between(place.in(1.9, 1.1 * side), place.in(3.1, symbol_half_height * side),
                         {0.3, 0.0, {}, 0.75}));
}

/// An eye on the pin and a barrel that the wire runs into.
void draw_terminal(const PartLook& look, const SymbolPlace& place, ShapeGroup& into) {
  if (look.tee)
    return draw_tee_terminal(place, into);
  into.add(LineShape{place.in(14), place.at(1), line_stub_style(), {}});
  into.add(PolygonShape{{place.in(0, 1.6), place.in(6, 1.6), place.in(8, 1.2), place.in(16, 1.2),
                         place.in(16, -1.2), place.in(8, -1.2), place.in(6, -1.6), place.in(0, -1.6)},
                        outline_style(),
                        {}});
  into.add(CircleShape{place.in(0), 2.4, outline_style(), {}});
}

/// A pointed eye that the rope lies round.
void draw_thimble(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.in(12), place.at(1), line_stub_style(), {}});
  into.add(PolygonShape{{place.in(0.8, 2.9), place.in(13), place.in(0.8, -2.9)}, {0.7, 0.0, {}, 1.0}, {}});
  into.add(CircleShape{place.in(0), 3.0, {0.7, 0.0, {}, 1.0}, {}});
}

/// A round block with holes for the lanyard: as many as it has, three where that is not stated.
void draw_deadeye(const PartLook& look, const SymbolPlace& place, ShapeGroup& into) {
  constexpr double middle = 4.4;
  constexpr int most = 9; // that stand apart
  into.add(LineShape{place.in(8), place.at(1), line_stub_style(), {}});
  into.add(CircleShape{place.in(middle), 4.2, outline_style(), {}});
  const int holes = look.holes > 0 ? std::min(look.holes, most) : 3;
  for (int i = 0; i < holes; ++i) {
    // In an arc on the side of the lanyard.
    const double share = holes == 1 ? 0.0 : 2.0 * i / (holes - 1) - 1.0;
    const double angle = share * std::numbers::pi * (holes > 3 ? 0.42 : 0.3);
    into.add(CircleShape{place.in(middle - 2.7 * std::cos(angle), 2.7 * std::sin(angle)),
                         holes > 5 ? 0.4 : 0.6,
                         {thin, 0.0, {}, 0.0},
                         {}});
  }
}

/// The rope itself round a spar, spliced behind it.
void draw_soft_eye(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  constexpr double middle = 4.2;
  into.add(CircleShape{place.in(middle), 2.4, {0.3, 0.0, {}, 0.75}, {}});
  std::vector<PaperPoint> loop{place.in(14, 0.7)};
  constexpr int steps = 16;
  for (int i = 0; i <= steps; ++i) {
    const double angle = std::numbers::pi * (0.35 + 1.3 * i / steps);
    loop.push_back(place.in(middle + 3.2 * std::cos(angle), 3.2 * std::sin(angle)));
  }
  loop.push_back(place.in(14, -0.7));
  into.add(PolylineShape{std::move(loop), {0.9, 0.0, {}, {}}, {}});
  into.add(box_between(place.in(13, 1.3), place.in(20, -1.3), outline_style()));
  for (const double x : {14.5, 16.5, 18.5})
    into.add(LineShape{place.in(x, -1.3), place.in(x + 1.0, 1.3), {thin, 0.0, {}, {}}, {}});
  into.add(LineShape{place.in(20), place.at(1), {0.9, 0.0, {}, {}}, {}});
}

/// A hook with its mouth closed by a gate, and the eye that the line is on.
void draw_hook(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.in(15), place.at(1), line_stub_style(), {}});
  std::vector<PaperPoint> bow{place.in(12, 0.0), place.in(10, -1.2)};
  constexpr int steps = 14;
  for (int i = 0; i <= steps; ++i) { // from below round the bearing to the point
    const double angle = std::numbers::pi * (1.62 - 1.12 * i / steps);
    bow.push_back(place.in(3.2 + 3.2 * std::cos(angle), 2.9 * std::sin(angle)));
  }
  into.add(PolylineShape{std::move(bow), {1.1, 0.0, {}, {}}, {}});
  into.add(LineShape{place.in(4.2, 2.9), place.in(10.6, 0.9), {0.5, 0.0, {}, {}}, {}}); // the gate
  into.add(CircleShape{place.in(10.6, 0.9), 0.5, {thin, 0.0, {}, 1.0}, {}});
  into.add(CircleShape{place.in(13.5), 1.9, {0.7, 0.0, {}, 1.0}, {}});
}

ShapeStyle structure_style() {
  return {0.3, 0.0, {}, 0.75};
}

/// A strap that leaves the mast wall at a slant.
void draw_tang(const PartLook& look, const SymbolPlace& place, ShapeGroup& into) {
  into.add(
      box_between(place.in(0, symbol_half_height), place.in(3, -symbol_half_height), structure_style()));
  into.add(PolygonShape{{place.in(3, 3.8), place.in(9, 1.8), place.at(1, 1.8), place.at(1, -1.8),
                         place.in(9, -1.8), place.in(3, 0.2)},
                        outline_style(),
                        {}});
  if (look.slot) // the bar of the terminal lies behind it
    into.add(box_between(place.in(-6.5, 0.7), place.in(-1.0, -0.7), {thin, 0.0, {}, 0.0}));
}

/// A plate that comes through the deck.
void draw_chainplate(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.in(0, 1.8), place.at(1, -1.8), outline_style()));
  into.add(
      box_between(place.in(5, symbol_half_height), place.in(8, -symbol_half_height), structure_style()));
}

/// A plate that several stays meet at.
void draw_junction(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(PolygonShape{
      {place.at(1, 1.4), place.at(1, -1.4), place.in(4, -4.2), place.in(4, 4.2)}, outline_style(), {}});
  for (const double above : {-2.4, 2.4})
    into.add(CircleShape{place.in(6, above), 0.8, outline_style(), {}});
}

/// Two jaws with their pins at right angles: one seen end on, one from the side.
void draw_toggle(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.in(0, 2.6), place.at(0.62, -2.6), outline_style()));
  into.add(box_between(place.at(0.5, 1.3), place.at(1, -1.3), outline_style()));
  into.add(LineShape{place.at(0.56, 3.6), place.at(0.56, -3.6), {0.9, 0.0, {}, {}}, {}});
}

/// A pair of flat plates.
void draw_link(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.in(0, 2.0), place.at(1, -2.0), outline_style()));
  into.add(LineShape{place.in(2.4), place.in(-2.4), {0.13, 0.0, {}, {}}, {}});
}

/// A bow with a pin across its open end.
void draw_shackle(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(PolylineShape{{place.at(1, 3.0), place.in(6, 3.0), place.in(2, 2.2), place.in(0, 0.0),
                          place.in(2, -2.2), place.in(6, -3.0), place.at(1, -3.0)},
                         {0.9, 0.0, {}, {}},
                         {}});
  into.add(LineShape{place.in(-0.8, 4.2), place.in(-0.8, -4.2), {0.9, 0.0, {}, {}}, {}});
}

/// A ribbed body between two eyes.
void draw_insulator(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.at(0), place.at(1), rod_style(), {}});
  into.add(box_between(place.at(0.25, 2.2), place.at(0.75, -2.2), outline_style()));
  for (const double share : {0.35, 0.45, 0.55, 0.65})
    into.add(LineShape{place.at(share, 3.6), place.at(share, -3.6), {0.9, 0.45, {}, {}}, {}});
}

/// A ring seen end on.
void draw_bush(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.at(0), place.at(1), {0.13, 0.0, {}, {}}, {}});
  into.add(CircleShape{place.at(0.5), 3.4, outline_style(), {}});
  into.add(CircleShape{place.at(0.5), 2.0, outline_style(), {}});
}

/// A bolt with a head and a hole for its split pin.
void draw_pin(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(LineShape{place.at(0), place.at(1), {0.13, 0.0, {}, {}}, {}});
  into.add(box_between(place.at(0.5, 4.2), {place.at(0.5).x + 2.0, place.axis + 4.2}, outline_style()));
  into.add(CircleShape{{place.at(0.5).x + 1.0, place.axis + 3.2}, 0.4, {0.2, 0.0, {}, 0.0}, {}});
}

/// A tube that the line runs through.
void draw_tube(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.at(0.05, 2.4), place.at(0.95, -2.4), {0.3, 0.0, {1.2, 0.8}, 1.0}));
  into.add(LineShape{place.at(0), place.at(1), line_stub_style(), {}});
}

/// Two jaws at right angles, built into an end: `end` is 0 where the part begins, `inner` is where it ends.
void draw_built_in_toggle(const SymbolPlace& place, double end, double inner, ShapeGroup& into) {
  const double between = end + 0.5 * (inner - end);
  into.add(box_between(place.at(end, 2.2), place.at(between, -2.2), outline_style()));
  into.add(box_between(place.at(end + 0.4 * (inner - end), 1.2), place.at(inner, -1.2), outline_style()));
  into.add(LineShape{place.at(between, 3.2), place.at(between, -3.2), {0.9, 0.0, {}, {}}, {}});
}

/// An open body with a threaded stud in each end.
void draw_turnbuckle(const PartLook& look, const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.at(0.18, 2.6), place.at(0.82, -2.6), outline_style()));
  into.add(box_between(place.at(0.26, 1.6), place.at(0.74, -1.6), outline_style()));
  for (const double end : {0.0, 1.0}) {
    const double inner = end == 0.0 ? 0.36 : 0.64;
    into.add(box_between(place.at(end, 0.9), place.at(inner, -0.9), outline_style()));
    for (int i = 1; i <= 4; ++i) {
      const double share = inner + (end - inner) * 0.06 * i;
      into.add(LineShape{place.at(share, 0.9), place.at(share, -0.9), {thin, 0.0, {}, {}}, {}});
    }
  }
  // Whichever way it is turned, its upper end is to the left.
  if (look.toggle_upper)
    draw_built_in_toggle(place, place.turned ? 1.0 : 0.0, place.turned ? 0.86 : 0.14, into);
  if (look.toggle_lower)
    draw_built_in_toggle(place, place.turned ? 0.0 : 1.0, place.turned ? 0.14 : 0.86, into);
}

/// Passes of cord between two bearings.
void draw_lashing(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  for (int i = -2; i <= 2; ++i)
    into.add(LineShape{place.in(0.4, 1.1 * i),
                       place.in(-0.4, 1.1 * i + (i % 2 == 0 ? 0.7 : -0.7)),
                       {0.35, 0.0, {}, {}},
                       {}});
}

/// Two blocks with parts of rope between them.
void draw_tackle(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  for (const double above : {-1.5, -0.5, 0.5, 1.5})
    into.add(LineShape{place.in(5, 1.4 * above), place.in(-5, 1.4 * above), {0.3, 0.0, {}, {}}, {}});
  for (const double end : {1.0, -1.0}) {
    into.add(LineShape{place.at(end > 0 ? 0.0 : 1.0), place.in(end * 5), rod_style(), {}});
    into.add(CircleShape{place.in(end * 5), 3.0, outline_style(), {}});
    into.add(CircleShape{place.in(end * 5), 0.6, {0.2, 0.0, {}, 0.0}, {}});
  }
}

/// A bar with a handle that folds over its middle.
void draw_lever(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.at(0, 1.4), place.at(1, -1.4), outline_style()));
  into.add(PolygonShape{{place.at(0.25, 1.4), place.at(0.8, 4.4), place.at(0.84, 3.0), place.at(0.35, 0.2)},
                        outline_style(),
                        {}});
  into.add(CircleShape{place.at(0.3, 0.5), 0.8, {0.2, 0.0, {}, 0.0}, {}});
}

/// A plate with a row of holes: as many as it has, seven where that is not stated; the one in use is black.
void draw_hole_adjuster(const PartLook& look, const SymbolPlace& place, ShapeGroup& into) {
  constexpr int most = 24; // that stand apart
  const int holes = look.holes > 0 ? std::min(look.holes, most) : 7;
  const int in_use = look.holes > 0 ? look.hole : 4;
  into.add(box_between(place.at(0, 2.0), place.at(1, -2.0), outline_style()));
  const double apart = (place.right - place.left) / (holes + 1);
  for (int i = 1; i <= holes; ++i)
    into.add(CircleShape{{place.left + apart * i, place.axis},
                         std::min(0.7, 0.36 * apart),
                         {thin, 0.0, {}, i == in_use ? 0.0 : 1.0},
                         {}});
}

/// A barrel and its rod.
void draw_cylinder(const PartLook&, const SymbolPlace& place, ShapeGroup& into) {
  into.add(box_between(place.at(0.5, 0.9), place.at(1, -0.9), outline_style()));
  into.add(box_between(place.at(0, 3.0), place.at(0.65, -3.0), outline_style()));
  into.add(LineShape{place.at(0.4, 3.0), place.at(0.4, -3.0), {0.5, 0.0, {}, {}}, {}});
}

struct SymbolOfKind {
  PartKind kind;
  void (*draw)(const PartLook& look, const SymbolPlace& place, ShapeGroup& into);
};

/// End fittings, what belongs to the boat, links, adjusters.
constexpr SymbolOfKind symbols[] = {
    {PartKind::terminal, draw_terminal},
    {PartKind::thimble, draw_thimble},
    {PartKind::soft_eye, draw_soft_eye},
    {PartKind::deadeye, draw_deadeye},
    {PartKind::hook, draw_hook},
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

PartLook look_of(const Part& part, const StackItem& item) {
  PartLook look{.kind = part.kind};
  const auto either = [&](EndType type) { return part.upper.type == type || part.lower.type == type; };
  // A hook on a terminal bears behind its plate as a bar does.
  look.tee = either(EndType::tee) || (part.kind == PartKind::terminal && either(EndType::hook));
  look.slot = either(EndType::slot);
  const std::string toggled = fact_text(part.particulars, fact_names.toggle);
  look.toggle_upper = toggled == "upper" || toggled == "both";
  look.toggle_lower = toggled == "lower" || toggled == "both";
  for (const End* end : {&part.upper, &part.lower})
    if (const EndDimension* count = end->find(EndDimensionName::count); count != nullptr)
      std::from_chars(count->text.data(), count->text.data() + count->text.size(), look.holes);
  if (part.kind == PartKind::hole_adjuster && part.step && part.shortest && part.longest) {
    const double steps = (part.longest->value - part.shortest->value) / part.step->value;
    look.holes = static_cast<int>(std::lround(std::clamp(steps, 0.0, 998.0))) + 1;
  }
  if (item.hole)
    look.hole = *item.hole;
  return look;
}

void draw_part_symbol(const PartLook& look, const SymbolPlace& place, ShapeGroup& into) {
  for (const SymbolOfKind& symbol : symbols)
    if (symbol.kind == look.kind)
      return symbol.draw(look, place, into);
  into.add(LineShape{place.at(0), place.at(1), rod_style(), {}});
  into.add(box_between(place.at(0.2, 2.5), place.at(0.8, -2.5), outline_style()));
}

} // namespace sheerpole
