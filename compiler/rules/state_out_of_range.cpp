#include "rules/adjuster_checks.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_state_out_of_range(const Rig& rig, const Derived& derived, CheckReport& report) {
  for (const DerivedPosition& position : derived.positions) {
    const State& state = rig.states[position.state];
    const std::string& stay = rig[position.stay].name;
    for (const TakeUp& adjuster : position.adjusters) {
      const bool short_of = adjuster.to_tighten < -threshold::negligible;
      const bool long_of = adjuster.to_slacken < -threshold::negligible;
      if (!short_of && !long_of) {
        report.pass(stay, "in " + state.name + " " + rig[adjuster.part].name + " is set to " +
                              length_text(adjuster.set.value));
        continue;
      }
      const Part& part = rig[adjuster.part];
      const Sourced<Length>& end = short_of ? *part.shortest : *part.longest;
      auto builder =
          diagnose("state-out-of-range",
                   {{"state", state.name},
                    {"stay", stay},
                    {"part", part.name},
                    {"set", length_text(adjuster.set.value)},
                    {"amount", length_text(-(short_of ? adjuster.to_tighten : adjuster.to_slacken))},
                    {"which", short_of ? "shortest" : "longest"},
                    {"end", length_text(end.value)}})
              .at(adjuster.set.provenance.place.value_or(state.positions[position.position].place))
              .about(stay);
      if (end.provenance.place)
        builder = std::move(builder).and_at(*end.provenance.place, "its range");
      report.find(std::move(builder));
    }
  }
}

} // namespace sheerpole
