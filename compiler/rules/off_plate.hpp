#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"

namespace sheerpole {

/// The two checks on how a stay leads to its chainplate, of which one speaks for a stay.
enum class OffPlate { usual, far };
void look_at_plate_leads(const Rig& rig, const Derived& derived, CheckReport& report, OffPlate check);

} // namespace sheerpole
