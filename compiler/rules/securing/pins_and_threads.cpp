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

/// A pin that is in the stack in its own right goes before the part with the jaw; the split pin of the jaw
/// says it too.
Securing securing_of(const Rig& rig, const Stay& stay, const JointPin& pin) {
  Securing result{pin.item, stated_fact(pin.part->particulars, fact_names.secured)};
  if (pin.own && pin.jaw != nullptr && result.held.how.answer == Answer::unstated)
    for (std::size_t i = 0; i < stay.stack.size(); ++i)
      if (stay.stack[i].kind == StackItem::Kind::part)
        if (const Part& part = rig[stay.stack[i].part]; pin.jaw == &part.upper || pin.jaw == &part.lower)
          result = {i, stated_fact(part.particulars, fact_names.secured)};
  if (pin.jaw != nullptr && (result.held.how.answer == Answer::unstated || result.held.odd))
    if (const EndDimension* split_pin = pin.jaw->find(EndDimensionName::split_pin))
      result.held = {{Answer::stated, say(rig, {P::split_pin, {Words{split_pin->text}}})}};
  return result;
}

/// Reports how the pins of one stay are secured.
class PinsOfStay {
public:
  PinsOfStay(const Rig& rig, const DerivedStay& derived, const std::string& name, StayReport& report)
      : rig_(rig), derived_(derived), stay_(rig[derived.stay]), name_(name), report_(report) {}

  void look() {
    for (const Joint& joint : derived_.joints)
      if (const auto pin = pin_of(rig_, joint))
        look_at(*pin, joint.name);
    for (const WhichEnd where : {WhichEnd::upper, WhichEnd::lower})
      if (const auto outer = outer_end(rig_, stay_, derived_.joints, where); outer && outer->pin)
        look_at(*outer->pin, {Any::as_it_is, {Words{outer->part->name}}});
    // What is said of a pin counts also where nothing says in which joint it lies.
    for (const StackPart& one : parts_of(rig_, stay_))
      if (std::find(seen_.begin(), seen_.end(), one.item) == seen_.end() &&
          stated_fact(one.part->particulars, fact_names.secured).how.answer != Answer::unstated)
        report_on({one.item, stated_fact(one.part->particulars, fact_names.secured)},
                  {Any::as_it_is, {Words{one.part->name}}});
  }

private:
  void look_at(const JointPin& pin, const Remark& joint) {
    const Securing securing = securing_of(rig_, stay_, pin);
    for (std::size_t i = 0; i < stay_.stack.size(); ++i) // the part, wherever it stands
      if (stay_.stack[i].kind == StackItem::Kind::part && &rig_[stay_.stack[i].part] == pin.part)
        seen_.push_back(i);
    report_on(securing, joint);
  }

  void report_on(const Securing& securing, const Remark& joint) {
    const std::string& part = rig_[stay_.stack[securing.item].part].name;
    report_stated(
        securing.held, joint, {P::pin_not_stated, {Remarks{{joint}}, Words{part}}},
        diagnose("pin-not-secured", {{"stay", name_}, {"joint", say(rig_, joint)}, {"part", part}})
            .at(stay_.stack[securing.item].place, said(P::its_pin))
            .about(name_),
        report_);
  }

  const Rig& rig_;
  const DerivedStay& derived_;
  const Stay& stay_;
  const std::string& name_;
  StayReport& report_;
  std::vector<std::size_t> seen_; ///< in the stack: of which the pin was looked at
};

void check_pin_not_secured(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  PinsOfStay(rig, stay, name, of_stay).look();
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
