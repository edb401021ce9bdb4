#pragma once

#include "rules/check_table.hpp"

/// Checks on sources, dates, evidence and the inspection log, each in the file of its slug. What each finds
/// is said in diagnostics/evidence_findings.cpp, where it draws the line in model/limits.cpp.
namespace sheerpole {

void check_reading_bare(const Rig& rig, const Derived& derived, CheckReport& report);
void check_tape_sags(const Rig& rig, const Derived& derived, CheckReport& report);
void check_reading_old(const Rig& rig, const Derived& derived, CheckReport& report);
void check_made_differs(const Rig& rig, const Derived& derived, CheckReport& report);
void check_number_without_source(const Rig& rig, const Derived& derived, CheckReport& report);
void check_installed_without_evidence(const Rig& rig, const Derived& derived, CheckReport& report);
void check_line_old(const Rig& rig, const Derived& derived, CheckReport& report);
void check_hardware_old(const Rig& rig, const Derived& derived, CheckReport& report);
void check_marked_renew(const Rig& rig, const Derived& derived, CheckReport& report);
void check_marked_watch(const Rig& rig, const Derived& derived, CheckReport& report);
void check_inspection_old(const Rig& rig, const Derived& derived, CheckReport& report);

} // namespace sheerpole
