#include "rules/joint_checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_tee_pulls_through(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_joint_findings(rig, derived, "tee-pulls-through", report);
}

} // namespace sheerpole
