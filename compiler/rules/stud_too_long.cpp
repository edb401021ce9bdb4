#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_stud_too_long(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "stud-too-long", report);
}

} // namespace sheerpole
