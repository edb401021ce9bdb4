#include "calculate/strength/stay_stiffness.hpp"

#include "calculate/behaviour/thermal_table.hpp"
#include "calculate/derived.hpp"
#include "calculate/facts.hpp"
#include "calculate/physics/line_deformation.hpp"
#include "calculate/strength/strength_phrases.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

namespace sheerpole {

StayStiffness stay_stiffness(const Rig& rig, const std::vector<Piece>& pieces) {
  std::vector<StretchedPiece> lines;
  for (const Piece& piece : pieces) {
    const LineMaterial& material = rig[piece.material];
    const auto stiffness = line_stiffness(material);
    if (!stiffness)
      return {std::nullopt, Remark(StrengthPhrase::stiffness_not_stated, {piece.material})};
    if (pieces.size() == 1)
      return {stiffness->value, {}};
    if (piece.body.unknown)
      return {std::nullopt, StrengthPhrase::length_unknown};
    lines.push_back({piece.body.known(), stiffness->value});
  }
  const auto together = axial_stiffness_in_series(lines);
  return {together, together ? Remark() : Remark(StrengthPhrase::no_length_of_line)};
}

std::optional<Length> length_of_lines(const std::vector<Piece>& pieces) {
  Length sum;
  for (const Piece& piece : pieces) {
    if (piece.body.unknown)
      return std::nullopt;
    sum += piece.body.known();
  }
  return sum;
}

std::optional<double> stated_coldest(const Rig& rig) {
  const Record* record = find_record(rig, RecordKind::take_up, name_of(RecordKind::take_up));
  const auto coldest = record == nullptr ? std::nullopt : fact_number(record->facts, fact_names.coldest);
  return coldest ? std::optional(coldest->value) : std::nullopt;
}

ColdLoss cold_loss(const Rig& rig, const DerivedStay& derived, double kelvin) {
  const Stay& stay = rig[derived.stay];
  ColdLoss result;
  result.kelvin = kelvin;
  const auto dock = fact_force(stay.particulars, fact_names.dock_tension);
  const StayStiffness stiffness = stay_stiffness(rig, derived.pieces);
  const auto length = length_of_lines(derived.pieces);
  const ThermalTable cold = thermal_table(rig, stay, derived.pieces, {kelvin});
  if (!dock)
    result.not_checked.push_back(Remark(StrengthPhrase::not_stated, {Words{"dock-tension"}}));
  if (!stiffness.stiffness)
    result.not_checked.push_back(stiffness.not_stated);
  result.not_checked.insert(result.not_checked.end(), cold.not_checked.begin(), cold.not_checked.end());
  if (result.not_checked.empty() && (!length || !(*length > Length{})))
    result.not_checked.push_back(StrengthPhrase::no_length_of_line);
  if (!result.not_checked.empty())
    return result;
  result.slack = cold.rows.front().slack();
  result.dock_tension = dock->value;
  result.lost = *stiffness.stiffness * (result.slack / *length);
  result.share = result.lost / dock->value;
  result.how = {StrengthPhrase::cold_loss_sum, {result.slack, *stiffness.stiffness, *length}};
  return result;
}

} // namespace sheerpole
