#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_thread_differs(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "thread-differs", report);
}

} // namespace sheerpole
