#pragma once

#include "rules/check_table.hpp"

/// Checks on lengths, pieces and what they rest on, each in the file of its slug. What each finds is said
/// in diagnostics/*_findings.cpp, where it draws the line in model/limits.cpp.
namespace sheerpole {

void check_negative_body(const Rig& rig, const Derived& derived, CheckReport& report);
void check_splice_on_wire(const Rig& rig, const Derived& derived, CheckReport& report);
void check_path_runs_upwards(const Rig& rig, const Derived& derived, CheckReport& report);
void check_routes_differ(const Rig& rig, const Derived& derived, CheckReport& report);
void check_pair_differs(const Rig& rig, const Derived& derived, CheckReport& report);
void check_cut_is_draft(const Rig& rig, const Derived& derived, CheckReport& report);
void check_assumed_input(const Rig& rig, const Derived& derived, CheckReport& report);
void check_expectation_missed(const Rig& rig, const Derived& derived, CheckReport& report);
void check_test_splice_reversed(const Rig& rig, const Derived& derived, CheckReport& report);

} // namespace sheerpole
