#include "rules/checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_wire_size_differs(const Rig& rig, const Derived& derived, DiagnosticSink& sink) {
  report_joint_findings(rig, derived, "wire-size-differs", sink);
}

} // namespace sheerpole
