#include "rules/geometry_checks.hpp"
#include "rules/shroud_angle.hpp"

namespace sheerpole {

void check_stay_angle_below_usual(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_shroud_angles(rig, derived, report, ShroudAngle::usual);
}

} // namespace sheerpole
