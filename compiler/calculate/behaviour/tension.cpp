#include "calculate/behaviour/tension.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/path_length.hpp"
#include "calculate/physics/hanging_line.hpp"
#include "calculate/physics/line_deformation.hpp"
#include "calculate/physics/physical_values.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

TensionEstimate lacking(TensionEstimate estimate, const std::string& what) {
  estimate.not_checked = what + " is not stated";
  return estimate;
}

TensionEstimate begun(const Record& record, std::string method) {
  TensionEstimate estimate;
  estimate.method = std::move(method);
  estimate.date = fact_text(record.facts, "date");
  estimate.by = fact_text(record.facts, "by");
  estimate.place = record.place;
  return estimate;
}

/// Fills in the tension, or says why there is none.
TensionEstimate worked_out(TensionEstimate estimate, const LineMaterial& material,
                           const std::optional<Force>& tension, std::string how) {
  if (!tension) {
    estimate.not_checked = "its numbers are outside what the formula holds for";
    return estimate;
  }
  estimate.tension = *tension;
  estimate.how = std::move(how);
  if (material.break_load)
    estimate.share_of_break = *tension / material.break_load->value;
  return estimate;
}

void add(const LineMaterial& material, const Record& record, std::vector<TensionEstimate>& result) {
  const auto frequency = fact_number(record.facts, "frequency");
  const auto pulse = fact_number(record.facts, "pulse");
  const auto stretch = fact_length(record.facts, "stretch");
  const auto over = fact_length(record.facts, "over");
  const auto mass = fact_number(material.particulars, "linear-mass");
  const auto stiffness = line_stiffness(material);
  const std::string mass_text = mass ? format_number(mass->value) + " kg/m" : "";
  if (frequency || pulse) {
    TensionEstimate estimate = begun(record, frequency ? "swing" : "pulse");
    if (!over)
      result.push_back(lacking(std::move(estimate), "over, the free length,"));
    else if (!mass)
      result.push_back(lacking(std::move(estimate), "linear-mass of " + material.name));
    else if (frequency)
      result.push_back(worked_out(std::move(estimate), material,
                                  tension_from_frequency(mass->value, over->value, frequency->value),
                                  "4 x " + mass_text + " x (" + length_text(over->value) + ")^2 x (" +
                                      format_number(frequency->value) + " Hz)^2, Mersenne"));
    else
      result.push_back(worked_out(std::move(estimate), material,
                                  tension_from_pulse(mass->value, over->value, pulse->value),
                                  "4 x " + mass_text + " x (" + length_text(over->value) + ")^2 / (" +
                                      format_number(pulse->value) + " s)^2, Mersenne"));
  }
  if (stretch) {
    TensionEstimate estimate = begun(record, "stretch");
    if (!over)
      result.push_back(lacking(std::move(estimate), "over, the marked length,"));
    else if (!stiffness)
      result.push_back(lacking(std::move(estimate), "stiffness of " + material.name));
    else
      result.push_back(worked_out(std::move(estimate), material,
                                  tension_from_stretch(over->value, stretch->value, stiffness->value),
                                  length_text(stretch->value) + " over " + length_text(over->value) +
                                      " x EA " + format_fixed(stiffness->value.kilonewtons(), 0) +
                                      " kN, Hooke"));
  }
}

} // namespace

std::vector<TensionEstimate> tension_estimates(const Rig& rig, StayId stay) {
  std::vector<TensionEstimate> result;
  for (const Record& record : rig.records)
    if (record.kind == "tension-reading" &&
        std::find(record.stays.begin(), record.stays.end(), stay) != record.stays.end())
      add(rig[rig[stay].material], record, result);
  return result;
}

std::optional<Sag> sag(const Rig& rig, const Stay& stay) {
  const auto tension = fact_force(stay.particulars, "dock-tension");
  const auto mass = fact_number(rig[stay.material].particulars, "linear-mass");
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
