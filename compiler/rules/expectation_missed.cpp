#include "rules/length_checks.hpp"
#include "rules/stay_quantity.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_expectation_missed(const Rig& rig, const Derived& derived, CheckReport& report) {
  for (const Expectation& expectation : rig.expectations) {
    const Length bound = *expectation.value.tolerance;
    for (const StayId id : expectation.stays) {
      const Stay& stay = rig[id];
      const std::vector<Length> values = stay_quantity(derived.stays[id.index()], expectation.quantity);
      if (values.size() != 1) {
        report.not_checked(stay.name, expectation.quantity + " has no one number");
        report.say(diagnose("expectation-not-checked",
                            {{"stay", stay.name},
                             {"quantity", expectation.quantity},
                             {"reason", values.empty()
                                            ? "it has no number yet"
                                            : "there are " + std::to_string(values.size()) + " of them"}})
                       .at(expectation.place)
                       .and_at(stay.place, "the stay")
                       .about(stay.name));
        continue;
      }
      const Length off = values.front() - expectation.value.value;
      const Length size = off < Length{} ? -off : off;
      if (size <= bound + threshold::negligible) {
        report.pass(stay.name, expectation.quantity + " is " + length_text(values.front()));
        continue;
      }
      report.find(diagnose("expectation-missed", {{"stay", stay.name},
                                                  {"quantity", expectation.quantity},
                                                  {"found", length_text(values.front())},
                                                  {"expected", length_text(expectation.value.value)},
                                                  {"bound", length_text(bound)},
                                                  {"off", length_text(size)}})
                      .at(expectation.place, length_text(values.front()) + " as calculated")
                      .and_at(stay.place, "the stay")
                      .about(stay.name));
    }
  }
}

} // namespace sheerpole
