#include "rules/by_side.hpp"
#include "rules/lacks_toggle.hpp"
#include "rules/securing_checks.hpp"
#include "rules/stack_parts.hpp"

namespace sheerpole {

namespace {

void look_at(const Rig& rig, const Stay& stay, const std::string& name, WhichEnd where,
             StayReport& report) {
  const auto end = articulation(rig, stay, where);
  if (!end || (!end->parallel && !end->two_pins))
    return;
  const std::string at = std::string(name_of(where)) + ": ";
  const auto part_name = [&](std::size_t item) { return rig[stay.stack[item].part].name; };
  if (end->swings)
    report.pass(at + *end->swings + " lets it swing both ways");
  else if (swing_of(rig, stay, *end, where) == Swing::lacks)
    return; // said by the finding about the missing toggle
  else if (end->parallel)
    find_once(report, diagnose("pins-parallel", {{"stay", name},
                                                 {"part", part_name(*end->parallel)},
                                                 {"where", where == WhichEnd::upper ? "aloft" : "below"}})
                          .at(stay.stack[*end->parallel].place, "parallel pins")
                          .about(name));
  else
    report.not_checked(at + "pins of " + part_name(*end->two_pins) + " is not stated");
}

} // namespace

void check_pins_parallel(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const WhichEnd where : {WhichEnd::upper, WhichEnd::lower})
                    look_at(rig, rig[stay.stay], name, where, of_stay);
                });
}

} // namespace sheerpole
