#include "calculate/facts.hpp"
#include "rules/by_side.hpp"
#include "rules/securing_checks.hpp"
#include "rules/stack_parts.hpp"

namespace sheerpole {

namespace {

void look_at(const Stay& stay, const std::string& name, const StackPart& one, StayReport& report) {
  const std::string body = fact_text(one.part->particulars, "body");
  const std::string hole = fact_text(one.part->particulars, "witness-hole");
  if (body.empty()) {
    report.not_checked("body of " + one.part->name + " is not stated");
  } else if (body == "open") {
    report.pass(one.part->name + ": open body");
  } else if (hole.empty()) {
    report.not_checked("witness-hole of " + one.part->name + " is not stated");
  } else if (hole == "yes") {
    report.pass(one.part->name + ": closed body with witness holes");
  } else {
    auto finding = diagnose("no-witness-hole", {{"stay", name}, {"part", one.part->name}})
                       .at(stay.stack[one.item].place, "this one")
                       .about(name);
    if (const auto place = place_of(one.part->particulars, "witness-hole"))
      finding = std::move(finding).and_at(*place, "stated here");
    report.find(std::move(finding));
  }
}

} // namespace

void check_no_witness_hole(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const StackPart& one : parts_of(rig, rig[stay.stay]))
                    if (one.part->kind == "turnbuckle")
                      look_at(rig[stay.stay], name, one, of_stay);
                });
}

} // namespace sheerpole
