#include "calculate/length_text.hpp"
#include "rules/by_side.hpp"
#include "rules/checks.hpp"

namespace sheerpole {

void check_no_fit(const Rig& rig, const Derived& derived, DiagnosticSink& sink) {
  report_by_side(rig, derived, sink, [&](const DerivedStay& stay, const std::string& name) {
    std::vector<Diagnostic> found;
    for (const Fit& fit : stay.fits) {
      if (!fit.ways.empty() || !fit.not_checked.empty())
        continue;
      const bool too_wide = fit.short_by > Length{};
      found.push_back(diagnose("no-fit", {{"stay", name},
                                          {"line", length_text(fit.line)},
                                          {"off", length_text(too_wide ? fit.short_by : -fit.short_by)},
                                          {"direction", too_wide ? "too short" : "too long"}})
                          .at(fit.place)
                          .about(name)
                          .build());
    }
    return found;
  });
}

} // namespace sheerpole
