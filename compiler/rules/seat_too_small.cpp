#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_seat_too_small(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "seat-too-small", report);
}

} // namespace sheerpole
