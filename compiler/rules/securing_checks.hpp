#pragma once

#include "rules/check_table.hpp"

/// Checks on articulation, securing, chafe and unlike metals, each in the file of its slug. What each finds
/// is said in diagnostics/*_findings.cpp, where it draws the line in model/limits.cpp.
namespace sheerpole {

void check_pin_not_secured(const Rig& rig, const Derived& derived, CheckReport& report);
void check_thread_not_locked(const Rig& rig, const Derived& derived, CheckReport& report);
void check_no_toggle_aloft(const Rig& rig, const Derived& derived, CheckReport& report);
void check_no_toggle_below(const Rig& rig, const Derived& derived, CheckReport& report);
void check_pins_parallel(const Rig& rig, const Derived& derived, CheckReport& report);
void check_metals_differ(const Rig& rig, const Derived& derived, CheckReport& report);
void check_no_witness_hole(const Rig& rig, const Derived& derived, CheckReport& report);
void check_not_accessible(const Rig& rig, const Derived& derived, CheckReport& report);
void check_edge_sharp(const Rig& rig, const Derived& derived, CheckReport& report);
void check_thimble_for_wire(const Rig& rig, const Derived& derived, CheckReport& report);
void check_no_chafe_gear(const Rig& rig, const Derived& derived, CheckReport& report);
void check_bearing_offset_zero(const Rig& rig, const Derived& derived, CheckReport& report);

} // namespace sheerpole
