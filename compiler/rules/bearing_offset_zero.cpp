#include "rules/by_side.hpp"
#include "rules/securing_checks.hpp"
#include "rules/stack_parts.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"
#include "wording/say.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// The thimble of no length at this joint; null when there is none.
const Part* thimble_without_length(const Rig& rig, const Stay& stay, const Joint& joint) {
  for (const std::size_t item : {joint.upper, joint.lower})
    if (stay.stack[item].kind == StackItem::Kind::part) {
      const Part& part = rig[stay.stack[item].part];
      if (part.kind == "thimble" && part.length && part.length->value < threshold::negligible)
        return &part;
    }
  return nullptr;
}

void look_at(const Rig& rig, const Stay& stay, const std::string& name, const Joint& joint,
             StayReport& report) {
  const Part* thimble = thimble_without_length(rig, stay, joint);
  if (thimble == nullptr || upper_end(rig, joint) == nullptr || lower_end(rig, joint) == nullptr)
    return;
  // What the pin has in its hole, or in the bush that fills it.
  const auto pin = std::find_if(joint.checks.begin(), joint.checks.end(), [](const JointCheck& check) {
    return check.finding == JointFinding::pin_too_big;
  });
  if (pin == joint.checks.end() || !pin->play) {
    report.not_checked(say(rig, joint.name) + ": the pin or the bore of " + thimble->name +
                       " is not stated");
    return;
  }
  if (*pin->play < -threshold::negligible)
    return; // it does not go in, which is said by its own finding
  if (*pin->play < threshold::negligible) {
    report.pass(say(rig, joint.name) + ": " + say(rig, pin->words));
    return;
  }
  find_once(report, diagnose("bearing-offset-zero", {{"stay", name},
                                                     {"joint", say(rig, joint.name)},
                                                     {"part", thimble->name},
                                                     {"words", say(rig, pin->words)},
                                                     {"offset", length_text(*pin->play / 2.0)}})
                        .at(thimble->length->provenance.place.value_or(thimble->place), "its length")
                        .and_at(stay.stack[joint.lower].place, "this joint")
                        .about(name));
}

} // namespace

void check_bearing_offset_zero(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Joint& joint : stay.joints)
                    look_at(rig, rig[stay.stay], name, joint, of_stay);
                });
}

} // namespace sheerpole
