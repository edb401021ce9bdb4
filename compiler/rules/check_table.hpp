#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"
#include "units/length.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// What the checks take for nothing. The thresholds proper are in limits/limit.hpp and can be set in a rig
/// file.
namespace sheerpole::threshold {

/// Smaller than anything that can be set or measured on a boat; keeps the rounding of a sum from being
/// called a fault. Choice of the project, no source.
inline constexpr Length negligible = Length::millimetres(0.001);

/// The same for angles. Choice of the project, no source.
inline constexpr double negligible_radians = 1e-9;

} // namespace sheerpole::threshold

namespace sheerpole {

/// One check: it reads the rig and what was calculated, and reports what it came to about each thing that
/// it looked at.
struct CheckRow {
  std::string_view slug; ///< of its finding
  void (*run)(const Rig& rig, const Derived& derived, CheckReport& report) = nullptr;
  LimitSet limits = {}; ///< thresholds that it goes by; when none of them has a value it cannot look
};

/// All checks, table by table: each subject has its checks, their helpers and its table in the file of its
/// name.
std::span<const CheckRow> all_checks();

/// Which check goes by which threshold, in the order of the thresholds and then of the checks.
std::vector<LimitUse> limit_uses();

/// The checks that go by a threshold, by their slugs, with blanks between.
std::string checks_of(Limit limit);

/// The check of this name; null when there is none.
const CheckRow* find_check(std::string_view slug);

} // namespace sheerpole
