#include "rules/adjuster_checks.hpp"
#include "rules/adjuster_setting.hpp"
#include "rules/by_side.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_adjuster_mostly_closed(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = rig.limits.value(Limit::first_fit_closed).value_or(1.0);
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const TakeUp& adjuster : stay.adjusters) {
          const Part& part = rig[adjuster.part];
          if (part.kind != "turnbuckle" || !in_range(adjuster) || near_an_end(rig, adjuster))
            continue;
          const std::string closed = percent_text(closed_share(adjuster));
          if (!mostly_closed(rig, adjuster)) {
            of_stay.pass(part.name + ": " + closed + " closed");
            continue;
          }
          const Span item = rig[stay.stay].stack[adjuster.item].place;
          of_stay.find(diagnose("adjuster-mostly-closed",
                                {{"stay", name},
                                 {"part", part.name},
                                 {"closed", closed},
                                 {"left", length_text(adjuster.to_tighten)},
                                 {"range", length_text(adjuster.to_tighten + adjuster.to_slacken)},
                                 {"most", percent_text(most)}})
                           .at(adjuster.set.provenance.place.value_or(item),
                               length_text(adjuster.to_tighten) + " to tighten")
                           .about(name));
        }
      });
}

} // namespace sheerpole
