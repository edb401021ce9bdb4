#include "calculate/facts.hpp"
#include "rules/by_side.hpp"
#include "rules/record_checks.hpp"

namespace sheerpole {

void check_installed_without_evidence(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const std::string installed = fact_text(stay.particulars, "installed");
                  const std::string evidence = fact_text(stay.particulars, "evidence");
                  if (installed.empty())
                    return;
                  if (!evidence.empty())
                    of_stay.pass("installed " + installed + ": " + evidence);
                  else
                    of_stay.find(
                        diagnose("installed-without-evidence", {{"thing", name}, {"date", installed}})
                            .at(stay.place)
                            .about(name));
                });
  for (const Part& part : rig.parts) {
    const std::string installed = fact_text(part.particulars, "installed");
    const std::string evidence = fact_text(part.particulars, "evidence");
    if (installed.empty())
      continue;
    if (!evidence.empty())
      report.pass(part.name, "installed " + installed + ": " + evidence);
    else
      report.find(diagnose("installed-without-evidence", {{"thing", part.name}, {"date", installed}})
                      .at(part.place)
                      .about(part.name));
  }
}

} // namespace sheerpole
