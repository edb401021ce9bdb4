#include "calculate/facts.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "wording/checks/common_phrases.hpp"
#include "wording/checks/securing_phrases.hpp"

#include <optional>

/// What keeps a pin in its hole and a screw from turning.
namespace sheerpole::pins_and_threads {

namespace {

using Common = CommonCheckPhrase;

using P = SecuringCheckPhrase;

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
      result.words = say(rig, {P::split_pin, {Words{split_pin->text}}});
  return result;
}

void look_at_pin(const Rig& rig, const Stay& stay, const std::string& name, const Joint& joint,
                 StayReport& report) {
  if (!has_jaw(rig, joint, true) && !has_jaw(rig, joint, false))
    return;
  const Securing securing = securing_of(rig, stay, joint);
  const std::string& part = rig[stay.stack[securing.item].part].name;
  if (securing.words.empty()) {
    report.not_checked({P::pin_not_stated, {Remarks{{joint.name}}, Words{part}}});
  } else if (!says_none(securing.words)) {
    report.pass({Common::of_something, {Remarks{{joint.name}}, Words{securing.words}}});
  } else {
    auto finding =
        diagnose("pin-not-secured", {{"stay", name}, {"joint", say(rig, joint.name)}, {"part", part}})
            .at(stay.stack[securing.item].place, said(P::its_pin))
            .about(name);
    if (securing.place)
      finding = std::move(finding).and_at(*securing.place, said(Common::stated_here));
    find_once(report, std::move(finding));
  }
}

void check_pin_not_secured(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Joint& joint : stay.joints)
                    look_at_pin(rig, rig[stay.stay], name, joint, of_stay);
                });
}

void check_thread_not_locked(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  for (const StackPart& one : parts_of(rig, stay)) {
                    if (one.part->kind != "turnbuckle")
                      continue;
                    const std::string locked = fact_text(one.part->particulars, "locked");
                    if (locked.empty()) {
                      of_stay.not_checked({P::threads_not_stated, {Words{one.part->name}}});
                    } else if (!says_none(locked)) {
                      of_stay.pass({Common::of_something, {Words{one.part->name}, Words{locked}}});
                    } else {
                      auto finding =
                          diagnose("thread-not-locked", {{"stay", name}, {"part", one.part->name}})
                              .at(stay.stack[one.item].place, said(Common::this_one))
                              .about(name);
                      if (const auto place = place_of(one.part->particulars, "locked"))
                        finding = std::move(finding).and_at(*place, said(Common::stated_here));
                      of_stay.find(std::move(finding));
                    }
                  }
                });
}

} // namespace

const CheckTable checks{CheckRow{"pin-not-secured", check_pin_not_secured},
                        CheckRow{"thread-not-locked", check_thread_not_locked}};

} // namespace sheerpole::pins_and_threads
