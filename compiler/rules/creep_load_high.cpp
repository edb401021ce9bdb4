#include "calculate/facts.hpp"
#include "calculate/strength/force_text.hpp"
#include "rules/by_side.hpp"
#include "rules/limit_pair.hpp"
#include "rules/lines_in_use.hpp"
#include "rules/strength_checks.hpp"
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
    const auto dock = fact_force(stay.particulars, "dock-tension");
    if (!dock || !rope.break_load) {
      report.not_checked(!dock ? "dock-tension is not stated"
                               : "break-load of " + rope.name + " is not stated");
      continue;
    }
    const double share = dock->value / rope.break_load->value;
    const std::string words = "dock tension " + force_text(dock->value) + " is " + percent_text(share) +
                              " of the " + force_text(rope.break_load->value) + " of " + rope.name +
                              limits.words(percent_text);
    if (is_below(limits.bound(), share))
      report.find(diagnose("creep-load-high", {{"stay", name}, {"words", words}})
                      .at(dock->provenance.place.value_or(stay.place))
                      .and_at(rope.place, "the rope")
                      .about(name));
    else
      report.pass(words);
  }
}

} // namespace

void check_creep_load_high(const Rig& rig, const Derived& derived, CheckReport& report) {
  const LimitPair limits{rig.limits.value(Limit::creep_load), rig.limits.value(Limit::creep_load_most)};
  if (limits.is_off())
    return;
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  look(rig, stay, name, limits, of_stay);
                });
}

} // namespace sheerpole
