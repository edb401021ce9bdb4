#include "calculate/adjust/removable_parts.hpp"

#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "wording/checks/adjuster_phrases.hpp"

#include <algorithm>

/// Whether a stay still holds together without the parts that may be taken out.
namespace sheerpole::removable_part_checks {

namespace {

using P = AdjusterCheckPhrase;

void look_at_part(const Rig& rig, const Stay& stay, StayId id, std::size_t item, const std::string& name,
                  StayReport& report) {
  const StackItem& removable = stay.stack[item];
  const ChangedStack without = change_stack(rig, id, {{removable.part, removable.count}}, {});
  const auto lost = std::find_if(without.joints.begin(), without.joints.end(),
                                 [](const NewJoint& joint) { return joint.without_pin; });
  if (lost == without.joints.end()) {
    report.pass({P::pins_stay, {removable.part}});
    return;
  }
  find_once(report,
            diagnose("removable-holds-pin",
                     {{"stay", name}, {"part", rig[removable.part].name}, {"joint", say(rig, lost->name)}})
                .at(removable.place, said(P::only_pin_here))
                .about(name)
                .edit(removable.removable_place, "no", said(P::leave_it_in)));
}

void check_removable_holds_pin(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stated = rig[stay.stay];
                  for (const std::size_t item : removable_items(rig, stated))
                    look_at_part(rig, stated, stay.stay, item, name, of_stay);
                });
}

} // namespace

const CheckTable checks{CheckRow{"removable-holds-pin", check_removable_holds_pin}};

} // namespace sheerpole::removable_part_checks
