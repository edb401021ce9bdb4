#pragma once

#include "rules/check_table.hpp"

/// Checks on adjusters, each in the file of its slug. What each finds is said in
/// diagnostics/*_findings.cpp, where it draws the line in model/limits.cpp.
namespace sheerpole {

void check_adjuster_out_of_range(const Rig& rig, const Derived& derived, CheckReport& report);
void check_thread_engagement_low(const Rig& rig, const Derived& derived, CheckReport& report);
void check_adjuster_near_end(const Rig& rig, const Derived& derived, CheckReport& report);
void check_adjuster_between_holes(const Rig& rig, const Derived& derived, CheckReport& report);
void check_state_out_of_range(const Rig& rig, const Derived& derived, CheckReport& report);
void check_take_up_spent(const Rig& rig, const Derived& derived, CheckReport& report);
void check_no_fit(const Rig& rig, const Derived& derived, CheckReport& report);
void check_screw_same_hand(const Rig& rig, const Derived& derived, CheckReport& report);
void check_adjuster_mostly_closed(const Rig& rig, const Derived& derived, CheckReport& report);
void check_take_up_low(const Rig& rig, const Derived& derived, CheckReport& report);
void check_reach_in_doubt(const Rig& rig, const Derived& derived, CheckReport& report);
void check_adjusters_differ(const Rig& rig, const Derived& derived, CheckReport& report);
void check_lashing_weak(const Rig& rig, const Derived& derived, CheckReport& report);
void check_knot_factor_high(const Rig& rig, const Derived& derived, CheckReport& report);

} // namespace sheerpole
