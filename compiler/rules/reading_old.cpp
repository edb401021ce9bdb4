#include "rules/by_side.hpp"
#include "rules/dated_facts.hpp"
#include "rules/record_checks.hpp"
#include "rules/used_reading.hpp"

namespace sheerpole {

void check_reading_old(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = *rig.limits.value(Limit::reading_age);
  const auto today = report_day(rig);
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        const Reading* reading = used_reading(rig, stay);
        if (reading == nullptr)
          return;
        const auto day = parse_day(reading->date);
        if (!today || !day)
          of_stay.not_checked(std::string(today ? "the day of the reading is not stated" : no_report_date));
        else if (older_than(*day, *today, most))
          of_stay.find(diagnose("reading-old", {{"stay", name},
                                                {"date", reading->date},
                                                {"age", age_text(*day, *today)},
                                                {"most", years_text(most)}})
                           .at(reading->place)
                           .about(name));
        else
          of_stay.pass("read " + age_text(*day, *today) + " before the report");
      });
}

} // namespace sheerpole
