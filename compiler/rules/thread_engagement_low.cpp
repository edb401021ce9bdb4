#include "calculate/least_engagement_words.hpp"
#include "rules/adjuster_checks.hpp"
#include "rules/by_side.hpp"
#include "rules/low_thread.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

Diagnostic engagement_finding(const Rig& rig, const Stay& stay, const TakeUp& adjuster,
                              const std::string& name) {
  const Part& part = rig[adjuster.part];
  const StackItem& item = stay.stack[adjuster.item];
  Diagnostic finding = diagnose("thread-engagement-low",
                                {{"stay", name},
                                 {"part", part.name},
                                 {"engaged", length_text(*adjuster.engaged)},
                                 {"amount", length_text(*adjuster.least_engagement - *adjuster.engaged)},
                                 {"least", length_text(*adjuster.least_engagement)},
                                 {"bound", least_engagement_words(rig)},
                                 {"thread", part.screw->thread.designation}})
                           .at(adjuster.set.provenance.place.value_or(item.place),
                               length_text(*adjuster.engaged) + " of thread in the body")
                           .about(name)
                           .build();
  if (part.engaged_at_longest->provenance.place)
    finding.others.push_back({*part.engaged_at_longest->provenance.place,
                              length_text(part.engaged_at_longest->value) + " at the longest"});
  return finding;
}

} // namespace

void check_thread_engagement_low(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const TakeUp& adjuster : stay.adjusters) {
          const Part& part = rig[adjuster.part];
          if (low_thread(adjuster))
            of_stay.find(engagement_finding(rig, rig[stay.stay], adjuster, name));
          else if (adjuster.engaged)
            of_stay.pass(part.name + ": " + length_text(*adjuster.engaged) + " of thread in the body");
          else if (part.kind == "turnbuckle")
            of_stay.not_checked(part.name + ": " + (part.screw ? "engaged-at-longest" : "its thread") +
                                " is not stated");
        }
      });
}

} // namespace sheerpole
