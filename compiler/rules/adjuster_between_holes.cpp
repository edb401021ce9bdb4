#include "rules/adjuster_checks.hpp"
#include "rules/by_side.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

/// The nearest hole to the length as set, counted from 1, within the row of holes.
double nearest_hole(const Part& part, Length set) {
  const double steps = std::round((set - part.shortest->value) / part.step->value);
  const double last = std::floor((part.longest->value - part.shortest->value) / part.step->value + 1e-9);
  return std::clamp(steps, 0.0, last) + 1.0;
}

std::optional<Diagnostic> hole_finding(const Rig& rig, const Stay& stay, const TakeUp& adjuster,
                                       const std::string& name) {
  const Part& part = rig[adjuster.part];
  if (!part.step)
    return std::nullopt;
  const double hole = nearest_hole(part, adjuster.set.value);
  const Length there = part.shortest->value + part.step->value * (hole - 1.0);
  const Length off = adjuster.set.value - there;
  const Length size = off < Length{} ? -off : off;
  if (size <= threshold::negligible)
    return std::nullopt;
  const std::string number = std::to_string(static_cast<int>(hole));
  return diagnose("adjuster-between-holes", {{"stay", name},
                                             {"part", part.name},
                                             {"set", length_text(adjuster.set.value)},
                                             {"hole", number},
                                             {"there", length_text(there)},
                                             {"off", length_text(size)},
                                             {"way", off < Length{} ? "longer" : "shorter"}})
      .at(adjuster.set.provenance.place.value_or(stay.stack[adjuster.item].place),
          length_text(size) + " from hole " + number)
      .about(name)
      .build();
}

} // namespace

void check_adjuster_between_holes(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const TakeUp& adjuster : stay.adjusters)
                    if (auto finding = hole_finding(rig, rig[stay.stay], adjuster, name))
                      of_stay.find(std::move(*finding));
                    else if (rig[adjuster.part].step)
                      of_stay.pass(rig[adjuster.part].name + " is pinned in one of its holes");
                });
}

} // namespace sheerpole
