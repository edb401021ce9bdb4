#include "calculate/behaviour/tension.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/path_length.hpp"
#include "calculate/physics/catenary.hpp"
#include "calculate/physics/line_deformation.hpp"
#include "calculate/physics/physical_values.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

TensionEstimate lacking(TensionEstimate estimate, Remark what) {
  estimate.not_checked = std::move(what);
  return estimate;
}

TensionEstimate begun(const Record& record, TensionMethod method) {
  TensionEstimate estimate;
  estimate.method = method;
  estimate.date = fact_text(record.facts, fact_names.date);
  estimate.by = fact_text(record.facts, fact_names.by);
  estimate.place = record.place;
  return estimate;
}

/// A number that a tension goes with: to which power.
struct Factor {
  const Influences& influences;
  double value = 0.0;
  double power = 1.0;
};

/// The bounds of the factors, as they move their product.
void add_bounds(TensionEstimate& estimate, std::initializer_list<Factor> factors) {
  for (const Factor& factor : factors)
    for (const Influence& influence : factor.influences)
      estimate.influences.push_back(
          {influence.bound, factor.power * influence.amount / factor.value * estimate.tension->newtons()});
  if (estimate.influences.empty())
    return;
  // What is stated once moves together.
  double sum = 0.0;
  for (const Influence& one : estimate.influences)
    for (const Influence& other : estimate.influences)
      if (one.bound == other.bound)
        sum += one.amount * other.amount;
  estimate.tolerance = Force::newtons(std::sqrt(std::max(sum, 0.0)));
}

/// Fills in the tension, or says why there is none.
TensionEstimate worked_out(TensionEstimate estimate, const LineMaterial& material,
                           const std::optional<Force>& tension, Remark how,
                           std::initializer_list<Factor> factors) {
  if (!tension) {
    estimate.not_checked = BehaviourPhrase::outside_formula;
    return estimate;
  }
  estimate.tension = *tension;
  estimate.how = std::move(how);
  add_bounds(estimate, factors);
  if (material.break_load)
    estimate.share_of_break = *tension / material.break_load->value;
  return estimate;
}

void add_estimates(const LineMaterial& material, MaterialId id, const Record& record,
                   std::vector<TensionEstimate>& result) {
  const auto frequency = fact_number(record.facts, fact_names.frequency);
  const auto pulse = fact_number(record.facts, fact_names.pulse);
  const auto stretch = fact_length(record.facts, fact_names.stretch);
  const auto over = fact_length(record.facts, fact_names.over);
  const auto mass = fact_number(material.particulars, fact_names.linear_mass);
  const auto stiffness = line_stiffness(material);
  if (const auto gauge = fact_force(record.facts, fact_names.tension))
    result.push_back(worked_out(begun(record, TensionMethod::gauge), material, gauge->value,
                                BehaviourPhrase::shown_by_gauge,
                                {{gauge->influences, gauge->value.newtons()}}));
  if (frequency || pulse) {
    TensionEstimate estimate = begun(record, frequency ? TensionMethod::swing : TensionMethod::pulse);
    if (!over)
      result.push_back(lacking(std::move(estimate), BehaviourPhrase::no_free_length));
    else if (!mass)
      result.push_back(
          lacking(std::move(estimate), {BehaviourPhrase::not_stated_of_line, {Words{"linear-mass"}, id}}));
    else if (frequency)
      result.push_back(worked_out(std::move(estimate), material,
                                  tension_from_frequency(mass->value, over->value, frequency->value),
                                  {BehaviourPhrase::mersenne_by_swing,
                                   {Number{mass->value}, over->value, Number{frequency->value}}},
                                  {{mass->influences, mass->value},
                                   {over->influences, over->value.metres(), 2.0},
                                   {frequency->influences, frequency->value, 2.0}}));
    else
      result.push_back(worked_out(
          std::move(estimate), material, tension_from_pulse(mass->value, over->value, pulse->value),
          {BehaviourPhrase::mersenne_by_pulse, {Number{mass->value}, over->value, Number{pulse->value}}},
          {{mass->influences, mass->value},
           {over->influences, over->value.metres(), 2.0},
           {pulse->influences, pulse->value, -2.0}}));
  }
  if (stretch) {
    TensionEstimate estimate = begun(record, TensionMethod::stretch);
    if (!over)
      result.push_back(lacking(std::move(estimate), BehaviourPhrase::no_marked_length));
    else if (!stiffness)
      result.push_back(
          lacking(std::move(estimate), {BehaviourPhrase::not_stated_of_line, {Words{"stiffness"}, id}}));
    else
      result.push_back(worked_out(std::move(estimate), material,
                                  tension_from_stretch(over->value, stretch->value, stiffness->value),
                                  {BehaviourPhrase::hooke_by_stretch,
                                   {stretch->value, over->value, Fixed{stiffness->value.kilonewtons(), 0}}},
                                  {{stretch->influences, stretch->value.metres()},
                                   {over->influences, over->value.metres(), -1.0},
                                   {stiffness->influences, stiffness->value.newtons()}}));
  }
}

} // namespace

std::vector<TensionEstimate> tension_estimates(const Rig& rig, StayId stay) {
  std::vector<TensionEstimate> result;
  for (const Record& record : rig.records)
    if (record.kind == RecordKind::tension_reading &&
        std::find(record.stays.begin(), record.stays.end(), stay) != record.stays.end())
      add_estimates(rig[rig[stay].material], rig[stay].material, record, result);
  return result;
}

std::optional<Sag> sag(const Rig& rig, const Stay& stay) {
  const auto tension = fact_force(stay.particulars, fact_names.dock_tension);
  const auto mass = fact_number(rig[stay.material].particulars, fact_names.linear_mass);
  if (!tension || !mass || stay.path.size() < 2)
    return std::nullopt;
  Sag result;
  double slope_cosine = 1.0;
  for (std::size_t i = 1; i < stay.path.size(); ++i) {
    const Vector3& from = rig[stay.path[i - 1].point].position;
    const Vector3& to = rig[stay.path[i].point].position;
    const Length run = distance(from, to);
    if (run <= result.span)
      continue;
    result.span = run;
    slope_cosine = std::hypot((to.x - from.x).metres(), (to.y - from.y).metres()) / run.metres();
  }
  const auto depth = parabola_sag(
      result.span, mass->value * standard_gravity_metres_per_second_squared * slope_cosine, tension->value);
  if (!depth)
    return std::nullopt;
  result.depth = *depth;
  result.tension = tension->value;
  if (const auto extra = parabola_extra_length(result.span, *depth))
    result.extra_length = *extra;
  return result;
}

} // namespace sheerpole
