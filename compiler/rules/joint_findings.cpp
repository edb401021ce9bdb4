#include "rules/joint_findings.hpp"

#include "rules/by_side.hpp"
#include "rules/stack_parts.hpp"

namespace sheerpole {

namespace {

void add_finding(const Stay& stay, const Joint& joint, const JointCheck& check, const std::string& name,
                 StayReport& report) {
  find_once(report, diagnose(check.slug, {{"stay", name}, {"joint", joint.name}, {"words", check.words}})
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
                      if (check.slug != slug)
                        continue;
                      if (check.result == JointResult::finding)
                        add_finding(rig[stay.stay], joint, check, name, of_stay);
                      else if (check.result == JointResult::pass)
                        of_stay.pass(joint.name + ": " + check.words);
                      else
                        of_stay.not_checked(joint.name + ": " + check.words);
                    }
                });
}

} // namespace sheerpole
