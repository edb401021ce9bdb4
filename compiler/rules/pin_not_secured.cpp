#include "calculate/facts.hpp"
#include "rules/by_side.hpp"
#include "rules/securing_checks.hpp"
#include "rules/stack_parts.hpp"
#include "wording/say.hpp"

#include <optional>

namespace sheerpole {

namespace {

/// What secures the pin of a joint.
struct Securing {
  std::size_t item = 0; ///< in the stack, of the part that it is stated of
  std::string words;    ///< empty: not stated
  std::optional<Span> place;
};

bool has_jaw(const Rig& rig, const Joint& joint, bool upper) {
  const End* end = upper ? upper_end(rig, joint) : lower_end(rig, joint);
  return end != nullptr && end->type == "jaw";
}

/// A pin that is in the stack in its own right goes before the part with the jaw; the split pin of the jaw
/// says it too.
Securing securing_of(const Rig& rig, const Stay& stay, const Joint& joint) {
  const bool upper = has_jaw(rig, joint, true);
  const std::size_t jaw_item = upper ? joint.upper : joint.lower;
  for (std::size_t i = joint.upper + 1; i < joint.lower; ++i) {
    const Part& worn = rig[stay.stack[i].part];
    if (worn.kind == "pin" && find_fact(worn.particulars, "secured") != nullptr)
      return {i, fact_text(worn.particulars, "secured"), place_of(worn.particulars, "secured")};
  }
  const Part& part = rig[stay.stack[jaw_item].part];
  Securing result{jaw_item, fact_text(part.particulars, "secured"), place_of(part.particulars, "secured")};
  if (result.words.empty())
    if (const EndDimension* split_pin =
            (upper ? upper_end(rig, joint) : lower_end(rig, joint))->find("split-pin"))
      result.words = "split pin " + split_pin->text;
  return result;
}

void look_at(const Rig& rig, const Stay& stay, const std::string& name, const Joint& joint,
             StayReport& report) {
  if (!has_jaw(rig, joint, true) && !has_jaw(rig, joint, false))
    return;
  const Securing securing = securing_of(rig, stay, joint);
  const std::string& part = rig[stay.stack[securing.item].part].name;
  if (securing.words.empty()) {
    report.not_checked(say(rig, joint.name) + ": what secures the pin of " + part + " is not stated");
  } else if (!says_none(securing.words)) {
    report.pass(say(rig, joint.name) + ": " + securing.words);
  } else {
    auto finding =
        diagnose("pin-not-secured", {{"stay", name}, {"joint", say(rig, joint.name)}, {"part", part}})
            .at(stay.stack[securing.item].place, "its pin")
            .about(name);
    if (securing.place)
      finding = std::move(finding).and_at(*securing.place, "stated here");
    find_once(report, std::move(finding));
  }
}

} // namespace

void check_pin_not_secured(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Joint& joint : stay.joints)
                    look_at(rig, rig[stay.stay], name, joint, of_stay);
                });
}

} // namespace sheerpole
