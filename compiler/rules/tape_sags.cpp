#include "rules/by_side.hpp"
#include "rules/record_checks.hpp"
#include "rules/used_reading.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>

namespace sheerpole {

void check_tape_sags(const Rig& rig, const Derived& derived, CheckReport& report) {
  const Length most = *rig.limits.length(Limit::tape_sag);
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        const Reading* reading = used_reading(rig, stay);
        if (reading == nullptr || reading->method != "tape")
          return;
        const auto& terms = stay.pin_to_pin.terms;
        const auto sag = std::find_if(terms.begin(), terms.end(),
                                      [](const Term& term) { return term.name == "tape sag"; });
        if (sag == terms.end()) {
          const bool hung = find_fact(reading->particulars, "spans") != nullptr;
          of_stay.not_checked(hung ? "what is needed for the sag of the tape is not stated"
                                   : "whether the tape hung free is not stated (spans)");
          return;
        }
        const Length amount = sag->amount < Length{} ? -sag->amount : sag->amount;
        if (amount <= most)
          of_stay.pass("the tape sagged by " + length_text(amount) + " of length");
        else
          of_stay.find(
              diagnose("tape-sags",
                       {{"stay", name}, {"amount", length_text(amount)}, {"most", length_text(most)}})
                  .at(reading->place)
                  .about(name));
      });
}

} // namespace sheerpole
