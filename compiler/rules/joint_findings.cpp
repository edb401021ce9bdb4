#include "rules/joint_findings.hpp"

#include "rules/by_side.hpp"
#include "rules/stack_parts.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

void add_finding(const Rig& rig, const Stay& stay, const Joint& joint, const JointCheck& check,
                 const std::string& name, StayReport& report) {
  find_once(report,
            diagnose(slug_of(check.finding),
                     {{"stay", name}, {"joint", say(rig, joint.name)}, {"words", say(rig, check.words)}})
                .at(stay.stack[joint.lower].place, "this one")
                .and_at(stay.stack[joint.upper].place, "under this one")
                .about(name));
}

} // namespace

void report_joint_findings(const Rig& rig, const Derived& derived, std::string_view slug,
                           CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Joint& joint : stay.joints)
                    for (const JointCheck& check : joint.checks) {
                      if (slug_of(check.finding) != slug)
                        continue;
                      if (check.result == JointResult::finding)
                        add_finding(rig, rig[stay.stay], joint, check, name, of_stay);
                      else if (check.result == JointResult::pass)
                        of_stay.pass(say(rig, joint.name) + ": " + say(rig, check.words));
                      else
                        of_stay.not_checked(say(rig, joint.name) + ": " + say(rig, check.words));
                    }
                });
}

} // namespace sheerpole
