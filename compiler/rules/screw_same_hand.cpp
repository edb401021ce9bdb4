#include "rules/adjuster_checks.hpp"
#include "rules/by_side.hpp"
#include "rules/stack_parts.hpp"

namespace sheerpole {

namespace {

bool is_threaded(const End& end) {
  return end.type == "stud" || end.type == "socket";
}

void look_at(const Stay& stay, const std::string& name, const StackPart& one, StayReport& report) {
  const Part& part = *one.part;
  if (!part.screw || !part.screw->pair || (!is_threaded(part.upper) && !is_threaded(part.lower)))
    return;
  const EndDimension* upper = part.upper.find("hand");
  const EndDimension* lower = part.lower.find("hand");
  if (upper == nullptr || lower == nullptr) {
    report.not_checked(part.name + ": the hand of its " + (upper == nullptr ? "upper" : "lower") +
                       " end is not stated");
    return;
  }
  if (upper->text != lower->text) {
    report.pass(part.name + ": " + upper->text + "-handed and " + lower->text + "-handed");
    return;
  }
  auto finding =
      diagnose("screw-same-hand", {{"stay", name}, {"part", part.name}, {"hand", upper->text + "-handed"}})
          .at(stay.stack[one.item].place, "this one")
          .about(name);
  if (part.lower.place)
    finding = std::move(finding).and_at(*part.lower.place, upper->text + "-handed like the other");
  report.find(std::move(finding));
}

} // namespace

void check_screw_same_hand(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const StackPart& one : parts_of(rig, rig[stay.stay]))
                    look_at(rig[stay.stay], name, one, of_stay);
                });
}

} // namespace sheerpole
