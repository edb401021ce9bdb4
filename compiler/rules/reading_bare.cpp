#include "rules/by_side.hpp"
#include "rules/record_checks.hpp"
#include "rules/used_reading.hpp"

namespace sheerpole {

void check_reading_bare(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        const Reading* reading = used_reading(rig, stay);
        if (reading == nullptr)
          return;
        const bool pull = find_fact(reading->particulars, "pull") != nullptr;
        const bool temperature = find_fact(reading->particulars, "temperature") != nullptr;
        // Light has no pull.
        const bool needs_pull = reading->method != "laser";
        if ((pull || !needs_pull) && temperature)
          of_stay.pass("the reading states " + std::string(needs_pull ? "pull and " : "") + "temperature");
        else
          of_stay.find(
              diagnose("reading-bare", {{"stay", name},
                                        {"method", reading->method},
                                        {"what", pull || !needs_pull ? "temperature"
                                                 : temperature       ? "pull"
                                                                     : "pull nor temperature"},
                                        {"not", pull || temperature || !needs_pull ? "no" : "neither"}})
                  .at(reading->place)
                  .about(name));
      });
}

} // namespace sheerpole
