#include "calculate/strength/cold_loss.hpp"

#include "calculate/behaviour/thermal_table.hpp"
#include "calculate/facts.hpp"
#include "calculate/strength/force_text.hpp"
#include "calculate/strength/stay_stiffness.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

std::optional<double> stated_coldest(const Rig& rig) {
  const Record* record = find_record(rig, "take-up", "take-up");
  const auto coldest = record == nullptr ? std::nullopt : fact_number(record->facts, "coldest");
  return coldest ? std::optional(coldest->value) : std::nullopt;
}

ColdLoss cold_loss(const Rig& rig, const DerivedStay& derived, double kelvin) {
  const Stay& stay = rig[derived.stay];
  ColdLoss result;
  result.kelvin = kelvin;
  const auto dock = fact_force(stay.particulars, "dock-tension");
  const StayStiffness stiffness = stay_stiffness(rig, derived.pieces);
  const auto length = length_of_lines(derived.pieces);
  const ThermalTable cold = thermal_table(rig, stay, derived.pieces, {kelvin});
  if (!dock)
    result.not_checked.push_back("dock-tension is not stated");
  if (!stiffness.stiffness)
    result.not_checked.push_back(stiffness.not_stated);
  result.not_checked.insert(result.not_checked.end(), cold.not_checked.begin(), cold.not_checked.end());
  if (result.not_checked.empty() && (!length || !(*length > Length{})))
    result.not_checked.push_back("there is no length of line");
  if (!result.not_checked.empty())
    return result;
  result.slack = cold.rows.front().slack();
  result.dock_tension = dock->value;
  result.lost = *stiffness.stiffness * (result.slack / *length);
  result.share = result.lost / dock->value;
  result.how = length_text(result.slack) + " x EA " + force_text(*stiffness.stiffness) + " / " +
               length_text(*length);
  return result;
}

} // namespace sheerpole
