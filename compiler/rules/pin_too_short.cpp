#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_pin_too_short(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "pin-too-short", report);
}

} // namespace sheerpole
