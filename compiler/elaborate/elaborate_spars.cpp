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
  spar.particulars = elaboration.particulars(declaration, {"sort", "heel", "axis", "carries"});
  for (const std::string_view vector : {"heel", "axis"})
    if (const ResolvedProperty* property = declaration.find(vector))
      good = elaboration.read.vector(property->syntax->value, *property->row, name) && good;
  if (const ResolvedProperty* sort = declaration.find("sort"))
    spar.sort = read_choice<SparSort>(elaboration, *sort, name);
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

} // namespace sheerpole
