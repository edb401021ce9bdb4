#include "calculate/facts.hpp"
#include "rules/dated_facts.hpp"
#include "rules/record_checks.hpp"

namespace sheerpole {

void check_hardware_old(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  const double most = *rig.limits.value(Limit::hardware_age);
  const auto today = report_day(rig);
  for (const Part& part : rig.parts) {
    const std::string installed = fact_text(part.particulars, "installed");
    const auto day = parse_day(installed);
    if (!today || !day)
      report.not_checked(part.name,
                         std::string(today ? "when it was installed is not stated" : no_report_date));
    else if (older_than(*day, *today, most))
      report.find(diagnose("hardware-old", {{"part", part.name},
                                            {"date", installed},
                                            {"age", age_text(*day, *today)},
                                            {"most", years_text(most)}})
                      .at(part.place)
                      .about(part.name));
    else
      report.pass(part.name, "installed " + age_text(*day, *today) + " before the report");
  }
}

} // namespace sheerpole
