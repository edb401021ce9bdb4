#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_split_pin_small(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "split-pin-small", report);
}

} // namespace sheerpole
