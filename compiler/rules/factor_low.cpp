#include "calculate/facts.hpp"
#include "calculate/strength/force_text.hpp"
#include "rules/by_side.hpp"
#include "rules/strength_checks.hpp"
#include "wording/say.hpp"
#include "wording/strength_words.hpp"

namespace sheerpole {

namespace {

/// The weakest link that breaks; null when none is known. A hole under its pin is worked long before it
/// breaks: pin-bearing-high looks at it by a factor of its own.
const ChainLink* weakest_of(const StayChain& chain) {
  const ChainLink* weakest = nullptr;
  for (const ChainLink& link : chain.links)
    if (link.kind != LinkKind::hole && link.break_load &&
        (weakest == nullptr || *link.break_load < *weakest->break_load))
      weakest = &link;
  return weakest;
}

void look(const Rig& rig, const DerivedStay& derived, const std::string& name, double least,
          StayReport& report) {
  const StayChain& chain = derived.chain;
  const Stay& stay = rig[derived.stay];
  const auto load = fact_force(stay.particulars, "load");
  if (!load) {
    report.not_checked("load is not stated");
    return;
  }
  const ChainLink* weakest = weakest_of(chain);
  if (weakest == nullptr) {
    report.not_checked("no link's break load is known");
    return;
  }
  const double factor = *weakest->break_load / load->value;
  const bool all_known = chain.unknown.empty();
  const std::string words = (all_known ? "holds " : "holds at most ") + force_text(*weakest->break_load) +
                            " (" + say(rig, weakest->name) + "), " + times_text(factor) +
                            " times its load of " + force_text(*load);
  if (is_below(factor, least))
    report.find(diagnose("factor-low", {{"stay", name}, {"words", words}, {"least", times_text(least)}})
                    .at(stay.stack[weakest->item].place, "the weakest that is known")
                    .and_at(load->provenance.place.value_or(stay.place), "its load")
                    .about(name));
  else if (!all_known)
    report.not_checked(words + "; not stated: " + unknown_words(rig, chain));
  else
    report.pass(words + "; at least " + times_text(least));
}

} // namespace

void check_factor_low(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto least = rig.limits.value(Limit::break_factor);
  if (!least)
    return;
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  look(rig, stay, name, *least, of_stay);
                });
}

} // namespace sheerpole
