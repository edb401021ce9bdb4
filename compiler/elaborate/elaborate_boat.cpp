#include "elaborate/elaboration.hpp"

namespace sheerpole {

void elaborate_boat(Elaboration& elaboration) {
  const ResolvedDeclaration* first = nullptr;
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
    if (declaration.kind->category != Category::boat)
      continue;
    if (first != nullptr) {
      elaboration.sink.report(diagnose("boat-twice")
                                  .at(declaration.syntax->kind.span, "a second boat")
                                  .and_at(first->syntax->kind.span, "the first one"));
      continue;
    }
    first = &declaration;
    Boat& boat = elaboration.rig.boat;
    boat.title = declaration.syntax->title ? declaration.syntax->title->text : "";
    const std::string owner = "the boat";
    for (const ResolvedProperty& property : declaration.properties) {
      const Value& value = property.syntax->value;
      Particular particular;
      particular.name = property.row->name;
      particular.text = elaboration.read.written(value);
      if (property.row->type == ValueType::text) {
        const auto text = elaboration.read.text(value, *property.row, owner);
        if (!text)
          continue;
        particular.text = *text;
      } else if (property.row->type == ValueType::choice) {
        const auto word = elaboration.read.word(value, *property.row, owner);
        if (!word)
          continue;
        particular.text = *word;
      } else {
        const auto quantity = elaboration.read.quantity(value, *property.row, owner);
        if (!quantity)
          continue;
        particular.value = *quantity;
      }
      if (property.row->name == "pair-tolerance")
        boat.pair_tolerance = Sourced<Length>{Length::from_si(particular.value.value.si),
                                              particular.value.provenance, std::nullopt};
      boat.particulars.push_back(std::move(particular));
    }
  }
}

} // namespace sheerpole
