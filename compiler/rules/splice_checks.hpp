#pragma once

#include "rules/check_table.hpp"

/// Checks on splices and eyes, each in the file of its slug. What each finds is said in
/// diagnostics/*_findings.cpp, where it draws the line in model/limits.cpp.
namespace sheerpole {

void check_bury_short(const Rig& rig, const Derived& derived, CheckReport& report);
void check_bury_below_usual(const Rig& rig, const Derived& derived, CheckReport& report);
void check_taper_short(const Rig& rig, const Derived& derived, CheckReport& report);
void check_burys_overlap(const Rig& rig, const Derived& derived, CheckReport& report);
void check_splice_not_locked(const Rig& rig, const Derived& derived, CheckReport& report);
void check_eye_short(const Rig& rig, const Derived& derived, CheckReport& report);
void check_eye_below_usual(const Rig& rig, const Derived& derived, CheckReport& report);
void check_eye_angle_wide(const Rig& rig, const Derived& derived, CheckReport& report);
void check_eye_ways_differ(const Rig& rig, const Derived& derived, CheckReport& report);

} // namespace sheerpole
