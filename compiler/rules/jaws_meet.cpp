#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_jaws_meet(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "jaws-meet", report);
}

} // namespace sheerpole
