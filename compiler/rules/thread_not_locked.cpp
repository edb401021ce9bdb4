#include "calculate/facts.hpp"
#include "rules/by_side.hpp"
#include "rules/securing_checks.hpp"
#include "rules/stack_parts.hpp"

namespace sheerpole {

void check_thread_not_locked(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  for (const StackPart& one : parts_of(rig, stay)) {
                    if (one.part->kind != "turnbuckle")
                      continue;
                    const std::string locked = fact_text(one.part->particulars, "locked");
                    if (locked.empty()) {
                      of_stay.not_checked("what locks the threads of " + one.part->name + " is not stated");
                    } else if (!says_none(locked)) {
                      of_stay.pass(one.part->name + ": " + locked);
                    } else {
                      auto finding =
                          diagnose("thread-not-locked", {{"stay", name}, {"part", one.part->name}})
                              .at(stay.stack[one.item].place, "this one")
                              .about(name);
                      if (const auto place = place_of(one.part->particulars, "locked"))
                        finding = std::move(finding).and_at(*place, "stated here");
                      of_stay.find(std::move(finding));
                    }
                  }
                });
}

} // namespace sheerpole
