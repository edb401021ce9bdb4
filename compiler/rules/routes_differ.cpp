#include "rules/by_side.hpp"
#include "rules/length_checks.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

std::string_view words_for(LengthRoute route) {
  switch (route) {
  case LengthRoute::reading:
    return "by the reading";
  case LengthRoute::stated:
    return "as stated";
  case LengthRoute::path:
    return "through the points";
  case LengthRoute::unknown:
    return "unknown";
  }
  return "unknown";
}

std::string labelled(LengthRoute route, Length length) {
  return length_text(length) + " " + std::string(words_for(route));
}

bool apart(const Rig& rig, const RouteComparison& other) {
  // A reading over an older one is a change of the boat or of the tape, not a contradiction.
  if (other.other == LengthRoute::reading)
    return false;
  const Length difference = other.difference < Length{} ? -other.difference : other.difference;
  return difference > *rig.limits.length(Limit::routes_apart) + threshold::negligible;
}

Diagnostic finding_of(const DerivedStay& derived_stay, const Stay& stay, const RouteComparison& other,
                      const std::string& name) {
  const Length taken = derived_stay.pin_to_pin.known();
  const Length difference = other.difference < Length{} ? -other.difference : other.difference;
  const auto& place = derived_stay.pin_to_pin.terms.front().provenance.place;
  Diagnostic finding = diagnose("routes-differ", {{"stay", name},
                                                  {"taken", labelled(derived_stay.route, taken)},
                                                  {"other", labelled(other.other, other.length)},
                                                  {"difference", length_text(difference)}})
                           .at(place.value_or(stay.place), labelled(derived_stay.route, taken))
                           .about(name)
                           .build();
  for (std::size_t i = 0; i < other.slips.size(); ++i)
    finding.why += (i == 0 ? ". It comes out if " : ", or if ") + other.slips[i].words;
  if (other.provenance.place)
    finding.others.push_back({*other.provenance.place, labelled(other.other, other.length)});
  return finding;
}

} // namespace

void check_routes_differ(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const RouteComparison& other : stay.other_routes)
                    if (apart(rig, other))
                      of_stay.find(finding_of(stay, rig[stay.stay], other, name));
                    else if (other.other != LengthRoute::reading)
                      of_stay.pass(labelled(stay.route, stay.pin_to_pin.known()) + ", " +
                                   labelled(other.other, other.length));
                  if (stay.other_routes.empty())
                    of_stay.not_checked("there is one way to its length");
                });
}

} // namespace sheerpole
