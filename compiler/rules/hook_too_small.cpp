#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_hook_too_small(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "hook-too-small", report);
}

} // namespace sheerpole
