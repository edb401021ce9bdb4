#pragma once

#include "rules/check_table.hpp"

/// Checks on how points, spreaders and stays stand to each other, each in the file of its slug. What each
/// finds is said in diagnostics/*_findings.cpp, where it draws the line in model/limits.cpp.
namespace sheerpole {

void check_spreader_off_bisector(const Rig& rig, const Derived& derived, CheckReport& report);
void check_spreader_far_off_bisector(const Rig& rig, const Derived& derived, CheckReport& report);
void check_tip_pulled_out(const Rig& rig, const Derived& derived, CheckReport& report);
void check_tip_not_held(const Rig& rig, const Derived& derived, CheckReport& report);
void check_tip_held_twice(const Rig& rig, const Derived& derived, CheckReport& report);
void check_stay_angle_small(const Rig& rig, const Derived& derived, CheckReport& report);
void check_stay_angle_below_usual(const Rig& rig, const Derived& derived, CheckReport& report);
void check_plate_off_lead(const Rig& rig, const Derived& derived, CheckReport& report);
void check_plate_far_off_lead(const Rig& rig, const Derived& derived, CheckReport& report);
void check_junction_off_line(const Rig& rig, const Derived& derived, CheckReport& report);
void check_stays_cross(const Rig& rig, const Derived& derived, CheckReport& report);
void check_stay_through_spar(const Rig& rig, const Derived& derived, CheckReport& report);
void check_stay_through_deck(const Rig& rig, const Derived& derived, CheckReport& report);
void check_direction_not_held(const Rig& rig, const Derived& derived, CheckReport& report);
void check_foretriangle_differs(const Rig& rig, const Derived& derived, CheckReport& report);

} // namespace sheerpole
