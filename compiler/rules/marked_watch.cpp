#include "rules/by_side.hpp"
#include "rules/latest_inspection.hpp"
#include "rules/record_checks.hpp"

namespace sheerpole {

void check_marked_watch(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const Inspection* entry : latest_inspections(rig, stay.stay)) {
          const std::string thing = inspected_thing(rig, *entry);
          if (entry->condition == "watch" || entry->condition == "not-accessible")
            of_stay.find(diagnose("marked-watch",
                                  {{"stay", name},
                                   {"thing", thing},
                                   {"condition", entry->condition == "watch" ? "watch" : "not accessible"},
                                   {"date", entry->date},
                                   {"by", entry->by},
                                   {"note", entry->note.empty() ? "" : ": " + entry->note}})
                             .at(entry->place)
                             .about(name));
          else
            of_stay.pass(thing + ": " + entry->condition + " on " + entry->date);
        }
      });
}

} // namespace sheerpole
