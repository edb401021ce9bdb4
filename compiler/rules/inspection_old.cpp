#include "rules/by_side.hpp"
#include "rules/dated_facts.hpp"
#include "rules/latest_inspection.hpp"
#include "rules/record_checks.hpp"

#include <algorithm>

namespace sheerpole {

void check_inspection_old(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = *rig.limits.value(Limit::inspection_age);
  const auto today = report_day(rig);
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        const auto entries = latest_inspections(rig, stay.stay);
        const auto last =
            std::max_element(entries.begin(), entries.end(),
                             [](const Inspection* a, const Inspection* b) { return a->date < b->date; });
        const auto day = last == entries.end() ? std::nullopt : parse_day((*last)->date);
        if (!today || !day)
          of_stay.not_checked(std::string(today ? "no inspection of it is in the log" : no_report_date));
        else if (older_than(*day, *today, most))
          of_stay.find(diagnose("inspection-old", {{"stay", name},
                                                   {"date", (*last)->date},
                                                   {"age", age_text(*day, *today)},
                                                   {"most", years_text(most)}})
                           .at((*last)->place)
                           .about(name));
        else
          of_stay.pass("looked at on " + (*last)->date);
      });
}

} // namespace sheerpole
