#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_ends_do_not_join(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "ends-do-not-join", report);
  // Ends that are not stated, or that may be joined some way: not checked.
  report_joint_findings(rig, derived, "ends", report);
}

} // namespace sheerpole
