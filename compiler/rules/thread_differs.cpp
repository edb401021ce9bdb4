#include "rules/checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_thread_differs(const Rig& rig, const Derived& derived, DiagnosticSink& sink) {
  report_joint_findings(rig, derived, "thread-differs", sink);
}

} // namespace sheerpole
