#include "calculate/behaviour/creep.hpp"

#include "calculate/facts.hpp"
#include "calculate/physics/fibre_creep.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "units/si_factors.hpp"

#include <utility>

namespace sheerpole {

namespace {

CreepAmount unknown(Remark why) {
  CreepAmount result;
  result.not_checked = std::move(why);
  return result;
}

/// The steady temperature: the one stated for creep, else the boat's own.
std::optional<double> temperature_of(const Rig& rig) {
  if (const Record* plan = find_record(rig, RecordKind::take_up, name_of(RecordKind::take_up)))
    if (const auto stated = fact_number(plan->facts, fact_names.creep_temperature))
      return stated->value;
  if (const auto reference = fact_number(rig.boat.particulars, fact_names.reference_temperature))
    return reference->value;
  return std::nullopt;
}

std::vector<CreepPoint> table_of(const Rig& rig, const LineMaterial& material) {
  std::vector<CreepPoint> points;
  for (const Record& record : rig.records) {
    if (record.kind != RecordKind::creep_rate || record.of != material.name)
      continue;
    const Particular* load = find_fact(record.facts, fact_names.load);
    const auto temperature = fact_number(record.facts, fact_names.temperature);
    const auto stretch = fact_number(record.facts, fact_names.stretch);
    const auto over = fact_number(record.facts, fact_names.over);
    if (load == nullptr || !temperature || !stretch || !over)
      continue;
    const bool as_force = load->value.value.dimension == dimension::force;
    if (as_force && !material.break_load)
      continue;
    const double share =
        as_force ? load->value.value.si / material.break_load->value.newtons() : load->value.value.si;
    points.push_back({share, temperature->value, stretch->value / over->value});
  }
  return points;
}

/// The share of the first year, when nothing better is stated.
CreepAmount from_first_year(const LineMaterial& material, MaterialId id, Length body, double seconds) {
  const auto share = fact_number(material.particulars, fact_names.creep);
  if (!share)
    return unknown({BehaviourPhrase::not_stated_of_line, {Words{"creep"}, id}});
  CreepAmount result;
  if (seconds > year * 1.0001 && share->value > 0.0)
    return unknown({BehaviourPhrase::creep_of_first_year_only, {id}});
  result.amount = body * share->value;
  result.how = {BehaviourPhrase::share_of_first_year, {Share{share->value}, body}};
  return result;
}

} // namespace

CreepAmount creep(const Rig& rig, const Stay& stay, const Piece& piece, double seconds) {
  const LineMaterial& material = rig[piece.material];
  if (material.kind != LineMaterial::Kind::rope &&
      find_fact(material.particulars, fact_names.creep) == nullptr) {
    CreepAmount result;
    result.amount = Length{};
    result.how = BehaviourPhrase::metal_does_not_creep;
    return result;
  }
  if (piece.body.unknown)
    return unknown(BehaviourPhrase::length_unknown);
  const Length body = piece.body.known();
  const std::vector<CreepPoint> points = table_of(rig, material);
  if (points.empty())
    return from_first_year(material, piece.material, body, seconds);
  const auto tension = fact_force(stay.particulars, fact_names.dock_tension);
  const auto temperature = temperature_of(rig);
  if (!tension)
    return unknown({BehaviourPhrase::not_stated_of_stay, {Words{"dock-tension"}, Words{stay.base}}});
  if (!material.break_load)
    return unknown({BehaviourPhrase::not_stated_of_line, {Words{"break-load"}, piece.material}});
  if (!temperature)
    return unknown(BehaviourPhrase::no_creep_temperature);
  const double share = tension->value / material.break_load->value;
  const auto energy = fact_number(material.particulars, fact_names.creep_energy);
  const auto volume = fact_number(material.particulars, fact_names.creep_volume);
  const auto section = fact_number(material.particulars, fact_names.fibre_section);
  std::optional<double> rate;
  BehaviourPhrase by = BehaviourPhrase::creep_by_table;
  if (points.size() == 1 && energy && volume && section && section->value > 0.0) {
    const CreepPoint& point = points.front();
    rate = creep_rate(point.rate, {energy->value, volume->value},
                      {*temperature, tension->value.newtons() / section->value},
                      {point.temperature_kelvin,
                       point.share_of_break * material.break_load->value.newtons() / section->value});
    by = BehaviourPhrase::creep_by_eyring;
  } else {
    rate = creep_rate_from_table(points, share, *temperature);
  }
  if (!rate)
    return unknown(
        {BehaviourPhrase::creep_beyond_stated, {piece.material, Share{share}, Temperature{*temperature}}});
  CreepAmount result;
  result.amount = body * (*rate * seconds);
  result.how = {by, {Fixed{*rate * year * 100.0, 4}, body, Share{share}, Temperature{*temperature}}};
  return result;
}

} // namespace sheerpole
