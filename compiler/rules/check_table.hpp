#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"

#include <span>
#include <string_view>

namespace sheerpole {

/// One check: it reads the rig and what was calculated, and reports what it came to about each thing that
/// it looked at.
struct CheckRow {
  std::string_view slug; ///< of its finding
  void (*run)(const Rig& rig, const Derived& derived, CheckReport& report) = nullptr;
};

/// All checks, table by table: each subject has its checks, their helpers and its table in the file of its
/// name.
std::span<const CheckRow> all_checks();

/// The check of this name; null when there is none.
const CheckRow* find_check(std::string_view slug);

} // namespace sheerpole
