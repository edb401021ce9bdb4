#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_seat_too_wide(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "seat-too-wide", report);
}

} // namespace sheerpole
