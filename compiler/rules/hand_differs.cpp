#include "rules/checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_hand_differs(const Rig& rig, const Derived& derived, DiagnosticSink& sink) {
  report_joint_findings(rig, derived, "hand-differs", sink);
}

} // namespace sheerpole
