#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_stud_engaged_short(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "stud-engaged-short", report);
}

} // namespace sheerpole
