#include "rules/geometry_checks.hpp"
#include "rules/off_plate.hpp"

namespace sheerpole {

void check_plate_off_lead(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_plate_leads(rig, derived, report, OffPlate::usual);
}

} // namespace sheerpole
