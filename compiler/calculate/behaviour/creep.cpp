#include "calculate/behaviour/creep.hpp"

#include "calculate/facts.hpp"
#include "calculate/physics/fibre_creep.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "units/si_factors.hpp"

#include <utility>

namespace sheerpole {

namespace {

CreepAmount unknown(std::string why) {
  CreepAmount result;
  result.not_checked = std::move(why);
  return result;
}

/// The steady temperature: the one stated for creep, else the boat's own.
std::optional<double> temperature_of(const Rig& rig) {
  if (const Record* plan = find_record(rig, "take-up", "take-up"))
    if (const auto stated = fact_number(plan->facts, "creep-temperature"))
      return stated->value;
  if (const auto reference = fact_number(rig.boat.particulars, "reference-temperature"))
    return reference->value;
  return std::nullopt;
}

std::vector<CreepPoint> table_of(const Rig& rig, const LineMaterial& material) {
  std::vector<CreepPoint> points;
  for (const Record& record : rig.records) {
    if (record.kind != "creep-rate" || record.of != material.name)
      continue;
    const Particular* load = find_fact(record.facts, "load");
    const auto temperature = fact_number(record.facts, "temperature");
    const auto stretch = fact_number(record.facts, "stretch");
    const auto over = fact_number(record.facts, "over");
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
CreepAmount from_first_year(const LineMaterial& material, Length body, double seconds) {
  const auto share = fact_number(material.particulars, "creep");
  if (!share)
    return unknown("creep of " + material.name + " is not stated");
  CreepAmount result;
  if (seconds > year * 1.0001 && share->value > 0.0)
    return unknown("creep of " + material.name + " is stated for the first year only");
  result.amount = body * share->value;
  result.how = percent_text(share->value) + " of " + length_text(body) + ", all of the first year";
  return result;
}

} // namespace

CreepAmount creep(const Rig& rig, const Stay& stay, const Piece& piece, double seconds) {
  const LineMaterial& material = rig[piece.material];
  if (material.kind != LineMaterial::Kind::rope && find_fact(material.particulars, "creep") == nullptr) {
    CreepAmount result;
    result.amount = Length{};
    result.how = "metal does not creep at these loads and temperatures: common practice, no source";
    return result;
  }
  if (piece.body.unknown)
    return unknown("the length is unknown");
  const Length body = piece.body.known();
  const std::vector<CreepPoint> points = table_of(rig, material);
  if (points.empty())
    return from_first_year(material, body, seconds);
  const auto tension = fact_force(stay.particulars, "dock-tension");
  const auto temperature = temperature_of(rig);
  if (!tension)
    return unknown("dock-tension of " + stay.base + " is not stated");
  if (!material.break_load)
    return unknown("break-load of " + material.name + " is not stated");
  if (!temperature)
    return unknown("neither creep-temperature nor reference-temperature is stated");
  const double share = tension->value / material.break_load->value;
  const auto energy = fact_number(material.particulars, "creep-energy");
  const auto volume = fact_number(material.particulars, "creep-volume");
  const auto section = fact_number(material.particulars, "fibre-section");
  std::optional<double> rate;
  std::string by;
  if (points.size() == 1 && energy && volume && section && section->value > 0.0) {
    const CreepPoint& point = points.front();
    rate = creep_rate(point.rate, {energy->value, volume->value},
                      {*temperature, tension->value.newtons() / section->value},
                      {point.temperature_kelvin,
                       point.share_of_break * material.break_load->value.newtons() / section->value});
    by = "Eyring's law from one point";
  } else {
    rate = creep_rate_from_table(points, share, *temperature);
    by = "the table of creep rates";
  }
  if (!rate)
    return unknown("creep of " + material.name + " at " + percent_text(share) + " of its break load and " +
                   temperature_text(*temperature) + " lies beyond what is stated");
  CreepAmount result;
  result.amount = body * (*rate * seconds);
  result.how = format_fixed(*rate * year * 100.0, 4) + " % a year of " + length_text(body) + " at " +
               percent_text(share) + " of break and " + temperature_text(*temperature) + ", by " + by;
  return result;
}

} // namespace sheerpole
