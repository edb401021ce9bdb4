#include "elaborate/elaboration.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

Side side_of(double to_starboard) {
  return to_starboard < 0.0 ? Side::port : to_starboard > 0.0 ? Side::starboard : Side::centre;
}

Vector3 vector_of(const Evaluated& place) {
  return {Length::from_si(place.vector[0].si), Length::from_si(place.vector[1].si),
          Length::from_si(place.vector[2].si)};
}

std::string spar_of(const Elaboration& elaboration, const Property& property) {
  const auto found = elaboration.tree.frames.find(&property);
  return found == elaboration.tree.frames.end() ? "" : elaboration.tree[found->second].name;
}

Point make_point(Elaboration& elaboration, const std::string& base, const Property& property,
                 const Evaluated& position) {
  Point point;
  point.name = base;
  point.base = base;
  point.title = property.title ? property.title->text : "";
  point.spar = spar_of(elaboration, property);
  point.position = vector_of(position);
  point.side = side_of(elaboration.read.to_starboard(property, position));
  point.provenance = position.provenance;
  if (position.tolerance)
    point.tolerance = Length::from_si(position.tolerance->si);
  point.influences = position.influences;
  return point;
}

PointId add(Rig& rig, Point point) {
  const PointId id{static_cast<std::uint32_t>(rig.points.size())};
  rig.points.push_back(std::move(point));
  return id;
}

/// The point that `declared` declares, where the statement that counts puts it.
void add_declared(Elaboration& elaboration, const Property& declared) {
  const SymbolId id = elaboration.tree.symbol_at(declared.name.span);
  const Symbol& symbol = elaboration.tree[id];
  if (symbol.declared != &declared || !symbol.point->side.missing())
    return;
  const Property& property = *symbol.point;
  PointFamily& family = elaboration.points[id.value];
  const auto position = elaboration.read.position(property, declared.name.text);
  if (!position) {
    family.bad = true;
    return;
  }
  Point point = make_point(elaboration, declared.name.text, property, *position);
  if (point.title.empty() && declared.title)
    point.title = declared.title->text;
  if (!property.value.mirrored) {
    family.only = add(elaboration.rig, std::move(point));
    return;
  }
  if (point.side == Side::centre) {
    elaboration.sink.report(
        diagnose("mirrored-on-centreline", {{"point", point.name}}).at(*property.value.mirrored));
    family.bad = true;
    return;
  }
  Point port = point;
  Point starboard = std::move(point);
  port.side = Side::port;
  starboard.side = Side::starboard;
  for (Point* twin : {&port, &starboard}) {
    Evaluated place = *position;
    elaboration.read.put_on_side(property, twin == &port, place);
    twin->position = vector_of(place);
    twin->influences = place.influences;
  }
  port.name += ".port";
  starboard.name += ".starboard";
  const PointId port_id = add(elaboration.rig, std::move(port));
  const PointId starboard_id = add(elaboration.rig, std::move(starboard));
  elaboration.rig.points[port_id.index()].twin = starboard_id;
  elaboration.rig.points[starboard_id.index()].twin = port_id;
  family.port = port_id;
  family.starboard = starboard_id;
}

/// `plate-a.port: …`: one side as measured, over the mirrored one or beside the other side.
void add_one_side(Elaboration& elaboration, SymbolId id, const Property& property) {
  const Symbol& symbol = elaboration.tree[id];
  const std::string name = symbol.name + "." + property.side.text;
  if (property.value.mirrored) {
    elaboration.sink.report(
        diagnose("mirrored-not-here", {{"what", "place of " + name}}).at(*property.value.mirrored));
    return;
  }
  PointFamily& family = elaboration.points[id.value];
  const Side side = property.side.text == "port" ? Side::port : Side::starboard;
  const auto position = elaboration.read.position(property, name);
  if (!position)
    family.bad = true;
  if (family.bad)
    return;
  if (family.only) {
    elaboration.sink.report(
        diagnose("point-not-mirrored", {{"point", symbol.name}, {"side", property.side.text}})
            .at(property.name.span)
            .and_at(symbol.span, "declared here, for one place only"));
    return;
  }
  Point point = make_point(elaboration, symbol.name, property, *position);
  if (point.side != side) {
    elaboration.sink.report(diagnose("point-on-wrong-side", {{"point", name}, {"side", property.side.text}})
                                .at(property.value.expression().span));
    family.bad = true;
    return;
  }
  point.name = name;
  std::optional<PointId>& mine = side == Side::port ? family.port : family.starboard;
  const std::optional<PointId>& other = side == Side::port ? family.starboard : family.port;
  Rig& rig = elaboration.rig;
  if (!mine) {
    mine = add(rig, std::move(point));
    if (other) {
      rig.points[mine->index()].twin = other;
      rig.points[other->index()].twin = mine;
    }
    return;
  }
  Point& earlier = rig.points[mine->index()];
  if (point.title.empty())
    point.title = earlier.title;
  point.twin = earlier.twin;
  point.overridden = true;
  earlier = std::move(point);
}

/// Whether what an expression says rests on this `let`, at any depth.
bool rests_on(const ResolvedTree& tree, const Expression& expression, const std::string& let,
              std::size_t depth = 0) {
  constexpr std::size_t deep_enough = 64; // a chain that turns back on itself is reported elsewhere
  if (expression.kind == ExpressionKind::name) {
    const Symbol& symbol = tree[tree.symbol_at(expression.span)];
    if (symbol.kind == Symbol::Kind::let)
      return symbol.name == let ||
             (depth < deep_enough && rests_on(tree, symbol.let->value.expression(), let, depth + 1));
  }
  return std::any_of(expression.operands.begin(), expression.operands.end(),
                     [&](const Expression& operand) { return rests_on(tree, operand, let, depth); });
}

/// What of the place of a spar is stated over what the file said first; null when nothing is.
const Override* moved_by(const ResolvedTree& tree, const ResolvedDeclaration& spar,
                         const std::string& name) {
  for (const std::string_view way : {"heel", "rake", "steeve", "axis"}) {
    const ResolvedProperty* property = spar.find(way);
    for (const Override& over : tree.overrides)
      if ((over.subject == name && over.property == way) ||
          (property != nullptr && over.property == "value" &&
           rests_on(tree, property->syntax->value.expression(), over.subject)))
        return &over;
  }
  return nullptr;
}

/// Where the place of a point is stated over the one that the file stated first; null when it is not.
const Override* stated_anew(const ResolvedTree& tree, const Point& point) {
  const Override* last = nullptr;
  for (const Override& over : tree.overrides)
    if (over.property == "place" && (over.subject == point.name || over.subject == point.base))
      last = &over;
  return last;
}

/// What a spar carries besides the points that are stated in its own frame.
void put_on_spar(Elaboration& elaboration, const ResolvedDeclaration& spar,
                 const ResolvedProperty& carries) {
  bool told = false;
  for (const Stop& stop : carries.syntax->value.stops) {
    const auto family = elaboration.points.find(elaboration.tree.symbol_at(stop.expression.span).value);
    if (family == elaboration.points.end() || family->second.bad)
      continue;
    for (const auto& id : {family->second.only, family->second.port, family->second.starboard}) {
      if (!id)
        continue;
      Point& point = elaboration.rig.points[id->index()];
      const std::string name = elaboration.name_of(spar);
      if (!point.spar.empty() && point.spar != name) {
        elaboration.sink.report(
            diagnose("point-on-two-spars", {{"point", point.base}, {"spar", name}, {"other", point.spar}})
                .at(stop.expression.span));
        break;
      }
      point.spar = name;
      const Override* anew = stated_anew(elaboration.tree, point);
      if (told || (anew == nullptr && elaboration.read.first_frame(spar.symbol) != nullptr))
        continue; // it moves and turns with the spar
      if (const Override* over = moved_by(elaboration.tree, spar, name);
          over != nullptr && (anew == nullptr || over > anew)) {
        told = true;
        elaboration.sink.report(
            diagnose("carried-not-turned",
                     {{"spar", name},
                      {"property", over->subject == name ? over->property : over->subject},
                      {"point", point.name}})
                .at(stop.expression.span)
                .and_at(over->is_span, "stated over what was there before"));
      }
    }
  }
}

} // namespace

void elaborate_points(Elaboration& elaboration) {
  for (const bool one_side : {false, true}) { // a side may be stated before the point that it belongs to
    for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
      if (declaration.kind->category != Category::points)
        continue;
      for (const ResolvedProperty& property : declaration.properties) {
        if (!one_side) {
          add_declared(elaboration, *property.syntax);
          continue;
        }
        const SymbolId id = elaboration.tree.symbol_at(property.syntax->name.span);
        const Symbol& symbol = elaboration.tree[id];
        if (symbol.declared != property.syntax)
          continue;
        const Property* sides[] = {symbol.port, symbol.starboard};
        if (symbol.starboard == property.syntax) // without a common place the order is that of the file
          std::swap(sides[0], sides[1]);
        for (const Property* side : sides)
          if (side != nullptr)
            add_one_side(elaboration, id, *side);
      }
    }
  }
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations)
    if (declaration.kind->category == Category::spar)
      if (const ResolvedProperty* carries = declaration.find("carries"))
        put_on_spar(elaboration, declaration, *carries);
}

} // namespace sheerpole
