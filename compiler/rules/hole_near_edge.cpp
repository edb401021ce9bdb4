#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_hole_near_edge(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "hole-near-edge", report);
}

} // namespace sheerpole
