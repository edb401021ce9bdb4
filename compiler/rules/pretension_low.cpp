#include "rules/pretension.hpp"
#include "rules/strength_checks.hpp"

namespace sheerpole {

void check_pretension_low(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_pretension(rig, derived, "pretension-low", Limit::pretension_least, true, report);
}

} // namespace sheerpole
