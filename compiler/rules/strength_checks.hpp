#pragma once

#include "rules/check_table.hpp"

/// Checks on strength, loads and what lines are made of, each in the file of its slug. What each finds is
/// said in diagnostics/*_findings.cpp, where it draws the line in model/limits.cpp.
namespace sheerpole {

void check_weakest_part(const Rig& rig, const Derived& derived, CheckReport& report);
void check_factor_low(const Rig& rig, const Derived& derived, CheckReport& report);
void check_pin_bearing_high(const Rig& rig, const Derived& derived, CheckReport& report);
void check_shared_pin_weak(const Rig& rig, const Derived& derived, CheckReport& report);
void check_pair_stretch_differs(const Rig& rig, const Derived& derived, CheckReport& report);
void check_creep_load_high(const Rig& rig, const Derived& derived, CheckReport& report);
void check_rope_hot(const Rig& rig, const Derived& derived, CheckReport& report);
void check_cold_slack(const Rig& rig, const Derived& derived, CheckReport& report);
void check_modulus_on_wrong_area(const Rig& rig, const Derived& derived, CheckReport& report);
void check_break_load_unlikely(const Rig& rig, const Derived& derived, CheckReport& report);
void check_pretension_low(const Rig& rig, const Derived& derived, CheckReport& report);
void check_pretension_high(const Rig& rig, const Derived& derived, CheckReport& report);
void check_panel_overloaded(const Rig& rig, const Derived& derived, CheckReport& report);

} // namespace sheerpole
