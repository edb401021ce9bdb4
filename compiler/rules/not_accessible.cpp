#include "calculate/facts.hpp"
#include "rules/by_side.hpp"
#include "rules/securing_checks.hpp"
#include "rules/stack_parts.hpp"

#include <algorithm>

namespace sheerpole {

void check_not_accessible(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const std::vector<StackPart> parts = parts_of(rig, stay);
                  bool stated = false;
                  for (const StackPart& one : parts) {
                    const std::string accessible = fact_text(one.part->particulars, "accessible");
                    stated = stated || !accessible.empty();
                    if (accessible == "yes")
                      of_stay.pass(one.part->name + ": can be looked at");
                    else if (accessible == "no")
                      of_stay.find(diagnose("not-accessible", {{"stay", name}, {"part", one.part->name}})
                                       .at(stay.stack[one.item].place, "this one")
                                       .about(name));
                  }
                  // A furler's drum and its foil are what hides pins.
                  const bool foil = std::any_of(parts.begin(), parts.end(), [](const StackPart& one) {
                    return one.part->kind == "foil";
                  });
                  if (foil && !stated)
                    of_stay.not_checked(
                        "whether the pins inside the foil and its drum can be looked at is not stated");
                });
}

} // namespace sheerpole
