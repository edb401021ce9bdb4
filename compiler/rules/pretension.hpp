#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"

#include <string_view>

namespace sheerpole {

/// Holds the dock tension of every wire and rod, over its break load, against one limit: at least it, or at
/// most it. Rope is set by its geometry and is not looked at.
void report_pretension(const Rig& rig, const Derived& derived, std::string_view slug, Limit limit,
                       bool at_least, CheckReport& report);

} // namespace sheerpole
