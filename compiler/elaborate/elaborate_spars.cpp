#include "elaborate/elaboration.hpp"

namespace sheerpole {

namespace {

void add_spar(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  const std::string name = elaboration.name_of(declaration);
  bool good = elaboration.has_required(declaration);
  Spar spar;
  spar.name = name;
  spar.title = declaration.syntax->title ? declaration.syntax->title->text : "";
  spar.place = elaboration.place_of(declaration);
  spar.particulars = elaboration.particulars(declaration, {"sort", "heel", "axis"});
  for (const std::string_view vector : {"heel", "axis"})
    if (const ResolvedProperty* property = declaration.find(vector))
      good = elaboration.read.vector(property->syntax->value, *property->row, name) && good;
  if (const ResolvedProperty* sort = declaration.find("sort"))
    spar.sort = elaboration.read.word(sort->syntax->value, *sort->row, name).value_or("");
  const ResolvedProperty* axis = declaration.find("axis");
  for (const std::string_view lean : {"rake", "steeve"})
    if (const ResolvedProperty* property = declaration.find(lean); property != nullptr && axis != nullptr)
      elaboration.sink.report(diagnose("axis-and-lean", {{"spar", name}, {"lean", std::string(lean)}})
                                  .at(property->syntax->name.span)
                                  .and_at(axis->syntax->name.span, "the axis"));
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

} // namespace sheerpole
