#include "calculate/facts.hpp"
#include "calculate/strength/force_text.hpp"
#include "rules/by_side.hpp"
#include "rules/strength_checks.hpp"
#include "wording/say.hpp"
#include "wording/strength_words.hpp"

namespace sheerpole {

namespace {

std::string unstated(const Rig& rig, const ChainLink& hole) {
  return say(rig, hole.name) + ": " + lacking_words(rig, hole) + " is not stated";
}

void look(const Rig& rig, const DerivedStay& derived, const std::string& name, double least,
          StayReport& report) {
  const Stay& stay = rig[derived.stay];
  const auto load = fact_force(stay.particulars, "load");
  bool said_load = false;
  for (const ChainLink& hole : derived.chain.links) {
    if (hole.kind != LinkKind::hole)
      continue;
    if (!load) {
      if (!said_load)
        report.not_checked("load is not stated");
      said_load = true;
      continue;
    }
    if (!hole.break_load) {
      report.not_checked(unstated(rig, hole));
      continue;
    }
    const double times = *hole.break_load / load->value;
    const std::string words = say(rig, hole.name) + " bears " + force_text(*hole.break_load) + " (" +
                              say(rig, hole.how) + "), " + times_text(times) + " times the load of " +
                              force_text(*load);
    if (is_below(times, least))
      report.find(
          diagnose("pin-bearing-high", {{"stay", name}, {"words", words}, {"least", times_text(least)}})
              .at(stay.stack[hole.item].place, "the hole is in this")
              .and_at(load->provenance.place.value_or(stay.place), "the load")
              .about(name));
    else
      report.pass(words + "; at least " + times_text(least));
  }
}

} // namespace

void check_pin_bearing_high(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto least = rig.limits.value(Limit::pin_bearing);
  if (!least)
    return;
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  look(rig, stay, name, *least, of_stay);
                });
}

} // namespace sheerpole
