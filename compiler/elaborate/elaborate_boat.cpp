#include "elaborate/elaboration.hpp"

#include <algorithm>

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
    if (particular->name == "pair-tolerance")
      boat.pair_tolerance = Sourced<Length>{Length::from_si(particular->value.value.si),
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

} // namespace sheerpole
