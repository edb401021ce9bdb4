#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_wire_construction_differs(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "wire-construction-differs", report);
}

} // namespace sheerpole
