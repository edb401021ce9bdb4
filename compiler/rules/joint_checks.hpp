#pragma once

#include "rules/check_table.hpp"

/// Checks on what meets at a joint, each in the file of its slug. What each finds is said in
/// diagnostics/*_findings.cpp, where it draws the line in model/limits.cpp.
namespace sheerpole {

void check_pin_too_big(const Rig& rig, const Derived& derived, CheckReport& report);
void check_pin_loose(const Rig& rig, const Derived& derived, CheckReport& report);
void check_jaw_too_narrow(const Rig& rig, const Derived& derived, CheckReport& report);
void check_jaw_too_wide(const Rig& rig, const Derived& derived, CheckReport& report);
void check_jaw_too_shallow(const Rig& rig, const Derived& derived, CheckReport& report);
void check_hole_near_edge(const Rig& rig, const Derived& derived, CheckReport& report);
void check_thread_differs(const Rig& rig, const Derived& derived, CheckReport& report);
void check_hand_differs(const Rig& rig, const Derived& derived, CheckReport& report);
void check_stud_engaged_short(const Rig& rig, const Derived& derived, CheckReport& report);
void check_stud_too_long(const Rig& rig, const Derived& derived, CheckReport& report);
void check_wire_size_differs(const Rig& rig, const Derived& derived, CheckReport& report);
void check_wire_construction_differs(const Rig& rig, const Derived& derived, CheckReport& report);
void check_seat_too_narrow(const Rig& rig, const Derived& derived, CheckReport& report);
void check_seat_too_small(const Rig& rig, const Derived& derived, CheckReport& report);
void check_ends_do_not_join(const Rig& rig, const Derived& derived, CheckReport& report);
void check_jaws_meet(const Rig& rig, const Derived& derived, CheckReport& report);
void check_hook_too_small(const Rig& rig, const Derived& derived, CheckReport& report);
void check_tee_too_big(const Rig& rig, const Derived& derived, CheckReport& report);
void check_tee_pulls_through(const Rig& rig, const Derived& derived, CheckReport& report);
void check_split_pin_small(const Rig& rig, const Derived& derived, CheckReport& report);
void check_pin_too_short(const Rig& rig, const Derived& derived, CheckReport& report);
void check_seat_too_wide(const Rig& rig, const Derived& derived, CheckReport& report);

} // namespace sheerpole
