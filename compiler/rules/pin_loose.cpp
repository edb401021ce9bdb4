#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_pin_loose(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "pin-loose", report);
}

} // namespace sheerpole
