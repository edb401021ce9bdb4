#include "calculate/facts.hpp"
#include "calculate/strength/force_text.hpp"
#include "rules/by_side.hpp"
#include "rules/limit_pair.hpp"
#include "rules/lines_in_use.hpp"
#include "rules/strength_checks.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

void look(const Rig& rig, const DerivedStay& derived, const std::string& name, const LimitPair& limits,
          StayReport& report) {
  const Stay& stay = rig[derived.stay];
  for (const MaterialId id : lines_of(derived)) {
    const LineMaterial& rope = rig[id];
    if (!is_hmpe(rope))
      continue;
    const auto hottest = fact_number(stay.particulars, "hottest");
    if (!hottest) {
      report.not_checked("hottest is not stated");
      return;
    }
    const std::string words =
        rope.name + " gets to " + temperature_text(hottest->value) + limits.words(temperature_text);
    if (is_below(limits.bound(), hottest->value))
      report.find(diagnose("rope-hot", {{"stay", name}, {"words", words}})
                      .at(hottest->provenance.place.value_or(stay.place))
                      .and_at(rope.place, "the rope")
                      .about(name));
    else
      report.pass(words);
  }
}

} // namespace

void check_rope_hot(const Rig& rig, const Derived& derived, CheckReport& report) {
  const LimitPair limits{rig.limits.value(Limit::rope_heat), rig.limits.value(Limit::rope_heat_most)};
  if (limits.is_off())
    return;
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  look(rig, stay, name, limits, of_stay);
                });
}

} // namespace sheerpole
