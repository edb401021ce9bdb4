#include "rules/adjuster_checks.hpp"
#include "rules/adjuster_setting.hpp"
#include "rules/by_side.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

/// By the rig's limits; else the project's own.
double reserve(const Rig& rig) {
  return rig.limits.value(Limit::adjuster_reserve).value_or(0.0);
}

Diagnostic near_end_finding(const Rig& rig, const Stay& stay, const TakeUp& adjuster,
                            const std::string& name) {
  const Part& part = rig[adjuster.part];
  const StackItem& item = stay.stack[adjuster.item];
  const bool tight = adjuster.to_tighten < adjuster.to_slacken;
  const Length left = tight ? adjuster.to_tighten : adjuster.to_slacken;
  const Length range = adjuster.to_tighten + adjuster.to_slacken;
  return diagnose("adjuster-near-end", {{"stay", name},
                                        {"part", part.name},
                                        {"amount", length_text(left)},
                                        {"way", tight ? "to tighten" : "to slacken"},
                                        {"range", length_text(range)},
                                        {"share", percent_text(reserve(rig))}})
      .at(adjuster.set.provenance.place.value_or(item.place),
          length_text(adjuster.to_tighten) + " to tighten, " + length_text(adjuster.to_slacken) +
              " to slacken")
      .about(name)
      .build();
}

} // namespace

void check_adjuster_near_end(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const TakeUp& adjuster : stay.adjusters)
                    if (near_an_end(rig, adjuster))
                      of_stay.find(near_end_finding(rig, rig[stay.stay], adjuster, name));
                    else if (rig[adjuster.part].kind != "lever")
                      of_stay.pass(rig[adjuster.part].name + ": " + length_text(adjuster.to_tighten) +
                                   " and " + length_text(adjuster.to_slacken) + " left");
                });
}

} // namespace sheerpole
