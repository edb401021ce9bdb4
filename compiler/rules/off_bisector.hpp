#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"

#include <string>

namespace sheerpole {

/// The two checks on the rise of a spreader, of which one speaks for a tip: the one for a little off the
/// bisector, or the one for far off it.
enum class OffBisector { usual, far };
void look_at_bisectors(const Rig& rig, const Derived& derived, CheckReport& report, OffBisector check);

} // namespace sheerpole
