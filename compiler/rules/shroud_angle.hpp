#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"

namespace sheerpole {

/// The two checks on the angle of a shroud at the mast, of which one speaks for a shroud.
enum class ShroudAngle { usual, least };
void look_at_shroud_angles(const Rig& rig, const Derived& derived, CheckReport& report, ShroudAngle check);

} // namespace sheerpole
