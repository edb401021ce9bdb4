#include "calculate/behaviour/thermal_table.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/path_length.hpp"
#include "calculate/physics/line_deformation.hpp"
#include "model/fact_name.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

const Spar* spar_named(const Rig& rig, const std::string& name) {
  for (const Spar& spar : rig.spars)
    if (spar.name == name)
      return &spar;
  return nullptr;
}

/// The point when the spar that it stands on is so much warmer.
Vector3 warmed(const Rig& rig, const Point& point, double warmer) {
  const Spar* spar = point.spar.empty() ? nullptr : spar_named(rig, point.spar);
  const auto expansion =
      spar == nullptr ? std::nullopt : fact_number(spar->particulars, fact_names.thermal);
  if (!expansion)
    return point.position;
  const auto& axis = spar->axes[2];
  const Length along = (point.position.x - spar->heel.x) * axis[0] +
                       (point.position.y - spar->heel.y) * axis[1] +
                       (point.position.z - spar->heel.z) * axis[2];
  const Length growth = along * (expansion->value * warmer);
  return {point.position.x + growth * axis[0], point.position.y + growth * axis[1],
          point.position.z + growth * axis[2]};
}

Length path_when_warmer(const Rig& rig, const Stay& stay, double warmer) {
  Length sum;
  for (std::size_t i = 1; i < stay.path.size(); ++i)
    sum += distance(warmed(rig, rig[stay.path[i - 1].point], warmer),
                    warmed(rig, rig[stay.path[i].point], warmer));
  return sum;
}

void add_once(std::vector<Remark>& not_checked, Remark what) {
  if (std::find(not_checked.begin(), not_checked.end(), what) == not_checked.end())
    not_checked.push_back(std::move(what));
}

std::vector<Remark> what_is_missing(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces) {
  std::vector<Remark> result;
  if (find_fact(rig.boat.particulars, fact_names.reference_temperature) == nullptr)
    result.push_back(BehaviourPhrase::no_reference_temperature);
  if (stay.path.size() < 2)
    result.push_back(BehaviourPhrase::no_path);
  bool on_spar = false;
  for (const PathStop& stop : stay.path) {
    const Point& point = rig[stop.point];
    on_spar = on_spar || !point.spar.empty();
    const Spar* spar = point.spar.empty() ? nullptr : spar_named(rig, point.spar);
    if (spar != nullptr && find_fact(spar->particulars, fact_names.thermal) == nullptr)
      add_once(result, {BehaviourPhrase::not_stated_of_name, {Words{"thermal"}, Words{spar->name}}});
  }
  if (stay.path.size() >= 2 && !on_spar)
    result.push_back(BehaviourPhrase::no_point_on_spar);
  for (const Piece& piece : pieces) {
    if (find_fact(rig[piece.material].particulars, fact_names.thermal) == nullptr)
      add_once(result, {BehaviourPhrase::not_stated_of_line, {Words{"thermal"}, piece.material}});
    if (piece.body.unknown)
      add_once(result, BehaviourPhrase::length_unknown);
  }
  return result;
}

} // namespace

std::vector<double> usual_temperatures() {
  std::vector<double> result;
  for (const double celsius : {-10.0, 0.0, 10.0, 20.0, 30.0, 40.0})
    result.push_back(celsius + 273.15);
  return result;
}

ThermalTable thermal_table(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces,
                           const std::vector<double>& kelvin) {
  ThermalTable table;
  table.not_checked = what_is_missing(rig, stay, pieces);
  if (!table.not_checked.empty())
    return table;
  const double reference = fact_number(rig.boat.particulars, fact_names.reference_temperature)->value;
  const Length path = path_when_warmer(rig, stay, 0.0);
  for (const double temperature : kelvin) {
    const double warmer = temperature - reference;
    ThermalRow row;
    row.kelvin = temperature;
    row.path = path_when_warmer(rig, stay, warmer) - path;
    for (const Piece& piece : pieces) {
      const auto expansion = fact_number(rig[piece.material].particulars, fact_names.thermal);
      if (const auto growth = thermal_growth(piece.body.known(), expansion->value, warmer))
        row.line += *growth;
    }
    table.rows.push_back(row);
  }
  return table;
}

} // namespace sheerpole
