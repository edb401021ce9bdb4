#include "rules/geometry_checks.hpp"
#include "rules/off_bisector.hpp"

namespace sheerpole {

void check_spreader_off_bisector(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_bisectors(rig, derived, report, OffBisector::usual);
}

} // namespace sheerpole
