#include "elaborate/elaboration.hpp"
#include "elaborate/read_fields.hpp"

#include "model/fact_name.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

/// A boat that another one is made from is a base, not a boat of this rig.
bool is_base(const ResolvedTree& tree, const ResolvedDeclaration& boat) {
  return !boat.syntax->name.missing() &&
         std::any_of(tree.declarations.begin(), tree.declarations.end(), [&](const auto& other) {
           return other.kind->category == Category::boat &&
                  other.syntax->from.text == boat.syntax->name.text;
         });
}

std::string title_of_base(const ResolvedTree& tree, const ResolvedDeclaration& boat) {
  for (const ResolvedDeclaration& other : tree.declarations)
    if (other.kind->category == Category::boat && !boat.syntax->from.missing() &&
        other.syntax->name.text == boat.syntax->from.text)
      return title_of(other);
  return "";
}

void read_boat(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  Boat& boat = elaboration.rig.boat;
  boat.title = title_of(declaration);
  refuse_unexplained_cut(elaboration, declaration);
  boat.sister_of = title_of_base(elaboration.tree, declaration);
  for (const ResolvedProperty& property : declaration.properties) {
    auto particular = elaboration.read.particular(property.syntax->value, *property.row, "the boat");
    if (!particular)
      continue;
    for (const auto& [name, member] : {std::pair(fact_names.pair_tolerance, &Boat::pair_tolerance),
                                       std::pair(fact_names.remake_tolerance, &Boat::remake_tolerance)})
      if (particular->name == name.text)
        boat.*member = Sourced<Length>{Length::from_si(particular->value.value.si),
                                       particular->value.provenance, std::nullopt};
    if (particular->name == "report-date")
      boat.report_date = particular->text;
    boat.particulars.push_back(std::move(*particular));
  }
}

} // namespace

void elaborate_boat(Elaboration& elaboration) {
  const ResolvedDeclaration* first = nullptr;
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
    if (declaration.kind->category != Category::boat || is_base(elaboration.tree, declaration))
      continue;
    if (first != nullptr) {
      elaboration.sink.report(diagnose("boat-twice")
                                  .at(declaration.syntax->kind.span, "a second boat")
                                  .and_at(first->syntax->kind.span, "the first one"));
      continue;
    }
    first = &declaration;
    read_boat(elaboration, declaration);
  }
}

namespace {

void add_spar(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  const std::string name = elaboration.name_of(declaration);
  bool good = elaboration.has_required(declaration);
  Spar spar;
  spar.name = name;
  spar.title = declaration.syntax->title ? declaration.syntax->title->text : "";
  spar.place = elaboration.place_of(declaration);
  read_fields(elaboration, declaration, name, spar);
  spar.particulars =
      particulars_beside<Spar, Point>(elaboration, declaration, name); // a point keeps `carries`
  for (const std::string_view vector : {"heel", "axis"})
    if (const ResolvedProperty* property = declaration.find(vector))
      good = elaboration.read.vector(property->syntax->value, *property->row, name) && good;
  const ResolvedProperty* stated = nullptr; // the first of the three ways to say how it leans
  for (const std::string_view way : {"axis", "rake", "steeve"}) {
    const ResolvedProperty* property = declaration.find(way);
    if (property != nullptr && stated != nullptr)
      elaboration.sink.report(
          diagnose("axis-and-lean",
                   {{"spar", name}, {"first", std::string(stated->row->name)}, {"lean", std::string(way)}})
              .at(property->syntax->name.span)
              .and_at(stated->syntax->name.span, "the " + std::string(stated->row->name)));
    if (stated == nullptr)
      stated = property;
  }
  const SparFrame* frame = good ? elaboration.read.frame(declaration.symbol) : nullptr;
  if (frame == nullptr)
    return;
  spar.heel = {Length::from_si(frame->heel[0]), Length::from_si(frame->heel[1]),
               Length::from_si(frame->heel[2])};
  spar.axes = frame->axes;
  spar.provenance = frame->provenance;
  elaboration.rig.spars.push_back(std::move(spar));
}

} // namespace

void elaborate_spars(Elaboration& elaboration) {
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations)
    if (declaration.kind->category == Category::spar && declaration.symbol != poison_symbol)
      add_spar(elaboration, declaration);
}

namespace {

/// A dolphin striker and its like stand on the centreline and have no twin.
bool is_centred(const Elaboration& elaboration, const Expression& point) {
  const auto found = elaboration.points.find(elaboration.tree.symbol_at(point.span).value);
  return found != elaboration.points.end() && found->second.only &&
         elaboration.rig[*found->second.only].side == Side::centre;
}

} // namespace

void elaborate_spreaders(Elaboration& elaboration) {
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
    if (declaration.kind->category != Category::spreader || !elaboration.has_required(declaration))
      continue;
    const Expression& root = declaration.find("root")->syntax->value.expression();
    const Expression& tip = declaration.find("tip")->syntax->value.expression();
    const std::string name = elaboration.name_of(declaration);
    const bool on_centreline = is_centred(elaboration, root) && is_centred(elaboration, tip);
    const std::vector<Side> usual =
        on_centreline ? std::vector<Side>{Side::centre} : std::vector<Side>{Side::port, Side::starboard};
    Spreader stated;
    read_fields(elaboration, declaration, name, stated);
    stated.title = title_of(declaration);
    stated.place = elaboration.place_of(declaration);
    stated.particulars = particulars_beside<Spreader>(elaboration, declaration, name);
    for (const Side side : sides_of(elaboration, declaration, usual)) {
      const auto root_id = elaboration.point_on(root, side, name);
      const auto tip_id = elaboration.point_on(tip, side, name);
      if (!root_id || !tip_id)
        continue;
      Spreader spreader = stated;
      spreader.name = side == Side::centre ? name : name + "." + std::string(name_of(side));
      spreader.side = side;
      spreader.root = *root_id;
      spreader.tip = *tip_id;
      elaboration.rig.spreaders.push_back(std::move(spreader));
    }
  }
}

} // namespace sheerpole
