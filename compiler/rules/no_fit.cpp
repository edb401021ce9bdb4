#include "rules/adjuster_checks.hpp"
#include "rules/by_side.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_no_fit(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const Fit& fit : stay.fits) {
          if (!fit.not_checked.empty()) {
            of_stay.not_checked(fit.not_checked);
            continue;
          }
          if (!fit.ways.empty()) {
            of_stay.pass("a line of " + length_text(fit.line) + " can be made to fit");
            continue;
          }
          const bool too_wide = fit.short_by > Length{};
          of_stay.find(diagnose("no-fit", {{"stay", name},
                                           {"line", length_text(fit.line)},
                                           {"off", length_text(too_wide ? fit.short_by : -fit.short_by)},
                                           {"direction", too_wide ? "too short" : "too long"}})
                           .at(fit.place)
                           .about(name));
        }
      });
}

} // namespace sheerpole
