#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/securing_phrases.hpp"

#include <utility>

/// What keeps a pin in its hole and a screw from turning.
namespace sheerpole::pins_and_threads {

namespace {

using Any = AnyCheckPhrase;

using P = SecuringCheckPhrase;

/// What secures the pin of a joint.
struct Securing {
  std::size_t item = 0; ///< in the stack, of the part that it is stated of
  StatedFact held;
};

bool has_jaw(const Rig& rig, const Joint& joint, bool upper) {
  const End* end = upper ? upper_end(rig, joint) : lower_end(rig, joint);
  return end != nullptr && end->type == EndType::jaw;
}

/// A pin that is in the stack in its own right goes before the part with the jaw; the split pin of the jaw
/// says it too.
Securing securing_of(const Rig& rig, const Stay& stay, const Joint& joint) {
  const bool upper = has_jaw(rig, joint, true);
  const std::size_t jaw_item = upper ? joint.upper : joint.lower;
  for (std::size_t i = joint.upper + 1; i < joint.lower; ++i) {
    const Part& worn = rig[stay.stack[i].part];
    if (worn.kind != PartKind::pin)
      continue;
    if (StatedFact held = stated_fact(worn.particulars, fact_names.secured);
        held.how.answer != Answer::unstated)
      return {i, std::move(held)};
  }
  Securing result{jaw_item, stated_fact(rig[stay.stack[jaw_item].part].particulars, fact_names.secured)};
  if (result.held.how.answer == Answer::unstated || result.held.odd)
    if (const EndDimension* split_pin =
            (upper ? upper_end(rig, joint) : lower_end(rig, joint))->find(EndDimensionName::split_pin))
      result.held = {{Answer::stated, say(rig, {P::split_pin, {Words{split_pin->text}}})}};
  return result;
}

void look_at_pin(const Rig& rig, const Stay& stay, const std::string& name, const Joint& joint,
                 StayReport& report) {
  if (!has_jaw(rig, joint, true) && !has_jaw(rig, joint, false))
    return;
  const Securing securing = securing_of(rig, stay, joint);
  const std::string& part = rig[stay.stack[securing.item].part].name;
  report_stated(
      securing.held, joint.name, {P::pin_not_stated, {Remarks{{joint.name}}, Words{part}}},
      diagnose("pin-not-secured", {{"stay", name}, {"joint", say(rig, joint.name)}, {"part", part}})
          .at(stay.stack[securing.item].place, said(P::its_pin))
          .about(name),
      report);
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
                  for (const StackPart& one : parts_of(rig, stay))
                    if (one.part->kind == PartKind::turnbuckle)
                      report_stated(
                          stated_fact(one.part->particulars, fact_names.locked),
                          {Any::as_it_is, {Words{one.part->name}}},
                          {P::threads_not_stated, {Words{one.part->name}}},
                          diagnose("thread-not-locked", {{"stay", name}, {"part", one.part->name}})
                              .at(stay.stack[one.item].place, said(Any::this_one))
                              .about(name),
                          of_stay);
                });
}

} // namespace

const CheckTable checks{CheckRow{"pin-not-secured", check_pin_not_secured},
                        CheckRow{"thread-not-locked", check_thread_not_locked}};

} // namespace sheerpole::pins_and_threads
