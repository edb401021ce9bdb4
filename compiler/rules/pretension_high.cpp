#include "rules/pretension.hpp"
#include "rules/strength_checks.hpp"

namespace sheerpole {

void check_pretension_high(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_pretension(rig, derived, "pretension-high", Limit::pretension_most, false, report);
}

} // namespace sheerpole
