#include "calculate/length_text.hpp"
#include "rules/by_side.hpp"
#include "rules/checks.hpp"
#include "rules/thresholds.hpp"

namespace sheerpole {

namespace {

std::optional<Diagnostic> finding_of(const Rig& rig, const Stay& stay, const std::string& name) {
  if (stay.path.size() < 2)
    return std::nullopt;
  const PathStop& first = stay.path.front();
  const PathStop& last = stay.path.back();
  const Length rise = rig[last.point].position.z - rig[first.point].position.z;
  if (rise <= threshold::path_rise)
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

void check_path_runs_upwards(const Rig& rig, const Derived& derived, DiagnosticSink& sink) {
  report_by_side(rig, derived, sink, [&](const DerivedStay& stay, const std::string& name) {
    std::vector<Diagnostic> found;
    if (auto finding = finding_of(rig, rig[stay.stay], name))
      found.push_back(std::move(*finding));
    return found;
  });
}

} // namespace sheerpole
