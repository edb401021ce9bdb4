#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_wire_size_differs(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "wire-size-differs", report);
}

} // namespace sheerpole
