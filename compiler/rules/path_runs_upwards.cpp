#include "rules/by_side.hpp"
#include "rules/length_checks.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

std::optional<Diagnostic> finding_of(const Rig& rig, const Stay& stay, const std::string& name) {
  const PathStop& first = stay.path.front();
  const PathStop& last = stay.path.back();
  const Length rise = rig[last.point].position.z - rig[first.point].position.z;
  if (rise <= *rig.limits.length(Limit::path_rise))
    return std::nullopt;
  return diagnose("path-runs-upwards", {{"stay", name},
                                        {"first", rig[first.point].base},
                                        {"last", rig[last.point].base},
                                        {"amount", length_text(rise)}})
      .at(first.place, "the upper end, by its place in the path")
      .and_at(last.place, length_text(rise) + " higher")
      .about(name)
      .build();
}

} // namespace

void check_path_runs_upwards(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  if (stay.path.size() < 2)
                    of_stay.not_checked("it has no path");
                  else if (auto finding = finding_of(rig, stay, name))
                    of_stay.find(std::move(*finding));
                  else
                    of_stay.pass(rig[stay.path.front().point].base + " is above " +
                                 rig[stay.path.back().point].base);
                });
}

} // namespace sheerpole
