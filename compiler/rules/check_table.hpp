#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"

#include <span>
#include <string_view>
#include <vector>

namespace sheerpole {

/// One check: it reads the rig and what was calculated, and reports what it came to about each thing that
/// it looked at.
struct CheckRow {
  std::string_view slug; ///< of its finding; the check is in the file of that name
  void (*run)(const Rig& rig, const Derived& derived, CheckReport& report) = nullptr;
};

/// The checks about one subject, each table in the file of its name.
std::span<const CheckRow> length_checks();
std::span<const CheckRow> joint_checks();
std::span<const CheckRow> securing_checks();
std::span<const CheckRow> adjuster_checks();
std::span<const CheckRow> splice_checks();
std::span<const CheckRow> geometry_checks();
std::span<const CheckRow> strength_checks();
std::span<const CheckRow> record_checks();

/// All checks, table by table.
std::vector<CheckRow> all_checks();

} // namespace sheerpole
