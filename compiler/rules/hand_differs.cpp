#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_hand_differs(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "hand-differs", report);
}

} // namespace sheerpole
