#include "rules/checks.hpp"
#include "rules/joint_findings.hpp"

namespace sheerpole {

void check_seat_too_narrow(const Rig& rig, const Derived& derived, DiagnosticSink& sink) {
  report_joint_findings(rig, derived, "seat-too-narrow", sink);
}

} // namespace sheerpole
