#include "calculate/strength/screening_inputs.hpp"

#include "calculate/facts.hpp"
#include "calculate/strength/transverse_loads.hpp"
#include "units/format_length.hpp"
#include "units/si_factors.hpp"

#include <cmath>
#include <utility>

namespace sheerpole {

void ScreeningInputs::taken(std::string name, Quantity value, Provenance provenance, std::string how) {
  screening_.inputs.push_back({std::move(name), value, std::move(how), std::move(provenance)});
}

std::optional<double> ScreeningInputs::number(std::string_view name) {
  const auto stated = fact_number(record_.facts, name);
  if (!stated) {
    lacks(std::string(name) + " is not stated");
    return std::nullopt;
  }
  taken(std::string(name), {stated->value, dimension::number}, stated->provenance);
  return stated->value;
}

double ScreeningInputs::number(std::string_view name, double otherwise, const std::string& source) {
  if (const auto stated = fact_number(record_.facts, name)) {
    taken(std::string(name), {stated->value, dimension::number}, stated->provenance);
    return stated->value;
  }
  Provenance provenance;
  provenance.source_class = SourceClass::practice;
  provenance.note = source;
  taken(std::string(name), {otherwise, dimension::number}, std::move(provenance));
  return otherwise;
}

std::optional<double> ScreeningInputs::righting_moment(bool at_thirty) {
  if (const auto stated = fact_number(record_.facts, "righting-moment")) {
    taken("righting-moment", {stated->value, dimension::moment}, stated->provenance);
    return stated->value;
  }
  const auto of_boat = fact_number(rig_.boat.particulars, "righting-moment");
  const auto angle = fact_number(rig_.boat.particulars, "righting-angle");
  if (!of_boat) {
    lacks("righting-moment is not stated");
    return std::nullopt;
  }
  const std::string at =
      angle ? "at " + format_fixed(angle->value / degree, 1) + " deg" : "at an angle that is not stated";
  if (at_thirty && !(angle && std::abs(angle->value - 30.0 * degree) < 0.01 * degree)) {
    lacks("righting-moment is not stated; that of the boat is " + at + ", and the method asks for 30 deg");
    return std::nullopt;
  }
  taken("righting-moment", {of_boat->value, dimension::moment}, of_boat->provenance, "of the boat, " + at);
  return of_boat->value;
}

std::optional<Force> ScreeningInputs::side_force() {
  const auto stated = fact_force(record_.facts, "side-force");
  if (!stated)
    return std::nullopt;
  taken("side-force", {stated->value.newtons(), dimension::force}, stated->provenance);
  return stated->value;
}

std::optional<Length> ScreeningInputs::half_beam(const Point* chainplate) {
  if (const auto stated = fact_length(record_.facts, "half-beam")) {
    taken("half-beam", {stated->value.metres(), dimension::length}, stated->provenance);
    return stated->value;
  }
  if (chainplate == nullptr) {
    lacks("half-beam is not stated, and there is no path that ends at a chainplate");
    return std::nullopt;
  }
  const double metres = std::abs(chainplate->position.y.metres());
  Provenance provenance = chainplate->provenance;
  provenance.written.clear();
  taken("half-beam", {metres, dimension::length}, std::move(provenance),
        "from the middle of the boat to " + chainplate->base);
  return Length::metres(metres);
}

void ScreeningInputs::not_used(std::initializer_list<std::string_view> names) {
  std::string words;
  for (const std::string_view name : names)
    if (find_fact(record_.facts, name) != nullptr)
      words += (words.empty() ? "" : ", ") + std::string(name);
  if (!words.empty())
    screening_.notes.push_back("stated in the load-screening of " + record_.of +
                               " and not used by this method: " + words);
}

void screen_by_share(const Rig& rig, const Record& record, const Stay& stay, LoadScreening& screening) {
  ScreeningInputs inputs(rig, record, screening);
  const auto moment = inputs.righting_moment(true);
  const auto beam = inputs.half_beam(stay.path.empty() ? nullptr : &rig[stay.path.back().point]);
  const double factor =
      inputs.number("load-factor", 1.5, "of the method, for a mast that carries the headsails");
  const auto share = inputs.number("share");
  const auto break_factor = inputs.number("break-factor");
  inputs.not_used({"side-force"});
  if (!moment || !beam || !share || !break_factor)
    return;
  const auto total = transverse_shroud_load(*moment, *beam, factor);
  const auto load = total ? shroud_load(*total, *share) : std::nullopt;
  const auto asked = load ? required_break_load(*load, *break_factor) : std::nullopt;
  if (!asked) {
    screening.not_checked.emplace_back("the chainplate is in the middle of the boat");
    return;
  }
  const auto result = [&](std::string name, Force force, std::string how) {
    screening.results.push_back({std::move(name), {force.newtons(), dimension::force}, std::move(how), {}});
  };
  result("total across the boat", *total, "load-factor x righting-moment / half-beam");
  result("load of " + stay.base, *load, "share x total");
  result("break load asked for", *asked, "break-factor x load");
}

} // namespace sheerpole
