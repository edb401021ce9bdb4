#include "calculate/strength/screening_inputs.hpp"

#include "calculate/facts.hpp"
#include "calculate/strength/strength_phrases.hpp"
#include "calculate/strength/transverse_loads.hpp"
#include "model/fact_name.hpp"
#include "units/si_factors.hpp"

#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

/// A property of the record or of the boat.
Remark property(std::string_view name) {
  return {StrengthPhrase::named, {Words{std::string(name)}}};
}

Remark not_stated(std::string_view name) {
  return {StrengthPhrase::not_stated, {Words{std::string(name)}}};
}

} // namespace

void ScreeningInputs::taken(Remark name, Quantity value, Provenance provenance, Remark how) {
  screening_.inputs.push_back({std::move(name), value, std::move(how), std::move(provenance)});
}

std::optional<double> ScreeningInputs::number(std::string_view name) {
  const auto stated = fact_number(record_.facts, name);
  if (!stated) {
    lacks(not_stated(name));
    return std::nullopt;
  }
  taken(property(name), {stated->value, dimension::number}, stated->provenance);
  return stated->value;
}

double ScreeningInputs::number(std::string_view name, double otherwise, Derivation source) {
  if (const auto stated = fact_number(record_.facts, name)) {
    taken(property(name), {stated->value, dimension::number}, stated->provenance);
    return stated->value;
  }
  Provenance provenance;
  provenance.source_class = SourceClass::practice;
  provenance.derivation = source;
  taken(property(name), {otherwise, dimension::number}, std::move(provenance));
  return otherwise;
}

std::optional<double> ScreeningInputs::righting_moment(bool at_thirty) {
  if (const auto stated = fact_number(record_.facts, fact_names.righting_moment)) {
    taken(property(fact_names.righting_moment), {stated->value, dimension::moment}, stated->provenance);
    return stated->value;
  }
  const auto of_boat = fact_number(rig_.boat.particulars, fact_names.righting_moment);
  const auto angle = fact_number(rig_.boat.particulars, fact_names.righting_angle);
  if (!of_boat) {
    lacks(not_stated(fact_names.righting_moment));
    return std::nullopt;
  }
  const Fixed degrees{angle ? angle->value / degree : 0.0, 1};
  if (at_thirty && !(angle && std::abs(angle->value - 30.0 * degree) < 0.01 * degree)) {
    lacks(angle ? Remark(StrengthPhrase::boat_moment_at_other_angle, {degrees})
                : Remark(StrengthPhrase::boat_moment_at_no_angle));
    return std::nullopt;
  }
  taken(property(fact_names.righting_moment), {of_boat->value, dimension::moment}, of_boat->provenance,
        angle ? Remark(StrengthPhrase::of_boat_at, {degrees})
              : Remark(StrengthPhrase::of_boat_at_no_angle));
  return of_boat->value;
}

std::optional<Force> ScreeningInputs::side_force() {
  const auto stated = fact_force(record_.facts, fact_names.side_force);
  if (!stated)
    return std::nullopt;
  taken(property(fact_names.side_force), {stated->value.newtons(), dimension::force}, stated->provenance);
  return stated->value;
}

std::optional<Length> ScreeningInputs::half_beam(const Point* chainplate) {
  if (const auto stated = fact_length(record_.facts, fact_names.half_beam)) {
    taken(property(fact_names.half_beam), {stated->value.metres(), dimension::length}, stated->provenance);
    return stated->value;
  }
  if (chainplate == nullptr) {
    lacks(StrengthPhrase::no_half_beam);
    return std::nullopt;
  }
  const double metres = std::abs(chainplate->position.y.metres());
  Provenance provenance = chainplate->provenance;
  provenance.written.clear();
  taken(property(fact_names.half_beam), {metres, dimension::length}, std::move(provenance),
        {StrengthPhrase::from_middle_to, {Words{chainplate->base}}});
  return Length::metres(metres);
}

void ScreeningInputs::not_used(std::initializer_list<std::string_view> names) {
  std::vector<Remark> stated;
  for (const std::string_view name : names)
    if (find_fact(record_.facts, name) != nullptr)
      stated.push_back(property(name));
  if (!stated.empty())
    screening_.notes.push_back(
        Remark(StrengthPhrase::not_used, {Words{record_.of}, Remarks{std::move(stated), Join::comma}}));
}

void screen_by_share(const Rig& rig, const Record& record, const Stay& stay, LoadScreening& screening) {
  ScreeningInputs inputs(rig, record, screening);
  const auto moment = inputs.righting_moment(true);
  const auto beam = inputs.half_beam(stay.path.empty() ? nullptr : &rig[stay.path.back().point]);
  const double factor = inputs.number(fact_names.load_factor, 1.5, Derivation::of_method_with_headsails);
  const auto share = inputs.number(fact_names.share);
  const auto break_factor = inputs.number(fact_names.break_factor);
  inputs.not_used({"side-force"});
  if (!moment || !beam || !share || !break_factor)
    return;
  const auto total = transverse_shroud_load(*moment, *beam, factor);
  const auto load = total ? shroud_load(*total, *share) : std::nullopt;
  const auto asked = load ? required_break_load(*load, *break_factor) : std::nullopt;
  if (!asked) {
    screening.not_checked.emplace_back(StrengthPhrase::chainplate_in_middle);
    return;
  }
  const auto result = [&](Remark name, Force force, Remark how) {
    screening.results.push_back({std::move(name), {force.newtons(), dimension::force}, std::move(how), {}});
  };
  result(StrengthPhrase::total_across, *total, StrengthPhrase::total_across_sum);
  result({StrengthPhrase::load_of, {Words{stay.base}}}, *load, StrengthPhrase::load_sum);
  result(StrengthPhrase::break_load_asked, *asked, StrengthPhrase::break_load_sum);
}

} // namespace sheerpole
