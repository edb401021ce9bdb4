#include "rules/strength/lines_of_stays.hpp"
#include "model/fact_name.hpp"

#include "calculate/facts.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/strength_phrases.hpp"

#include <algorithm>
#include <map>
#include <string>

namespace sheerpole {

std::vector<MaterialId> lines_of(const DerivedStay& stay) {
  std::vector<MaterialId> result;
  for (const Piece& piece : stay.pieces)
    if (std::find(result.begin(), result.end(), piece.material) == result.end())
      result.push_back(piece.material);
  return result;
}

std::vector<MaterialId> lines_in_use(const Rig& rig, const Derived& derived) {
  std::map<std::string, std::size_t> by_name;
  for (std::size_t i = 0; i < rig.materials.size(); ++i)
    by_name.emplace(rig.materials[i].name, i);
  std::vector<bool> used(rig.materials.size(), false);
  for (const DerivedStay& derived_stay : derived.stays) {
    const Stay& stay = rig[derived_stay.stay];
    for (const Piece& piece : derived_stay.pieces)
      used[piece.material.index()] = true;
    if (stay.replaces)
      used[stay.replaces->index()] = true;
    for (const StackItem& item : stay.stack) {
      if (item.kind != StackItem::Kind::part)
        continue;
      const Particular* cord = find_fact(rig[item.part].particulars, fact_names.cord);
      if (cord == nullptr)
        continue;
      for (const std::string& name : cord->names)
        if (const auto found = by_name.find(name); found != by_name.end())
          used[found->second] = true;
    }
  }
  std::vector<MaterialId> result;
  for (std::size_t i = 0; i < used.size(); ++i)
    if (used[i])
      result.push_back(MaterialId{static_cast<std::uint32_t>(i)});
  return result;
}

std::optional<DockShare> dock_share(const Stay& stay, const LineMaterial& line, StayReport& report) {
  const auto dock = fact_force(stay.particulars, fact_names.dock_tension);
  if (!dock || !line.break_load) {
    report.not_checked(
        !dock ? Remark(AnyCheckPhrase::not_stated, {Words{"dock-tension"}})
              : Remark(AnyCheckPhrase::of_not_stated, {Words{"break-load"}, Words{line.name}}));
    return std::nullopt;
  }
  const double share = dock->value / line.break_load->value;
  return DockShare{share,
                   dock->provenance.place.value_or(stay.place),
                   {StrengthCheckPhrase::dock_share,
                    {dock->value, Share{share}, line.break_load->value, Words{line.name}}}};
}

bool is_hmpe(const LineMaterial& material) {
  return material.kind == LineMaterial::Kind::rope && material.construction.fibre == Fibre::hmpe;
}

} // namespace sheerpole
