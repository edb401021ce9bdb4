#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"

#include <string_view>

namespace sheerpole {

/// Reports what the comparison of this name came to at every joint; a finding stands at the lower of the
/// two things. Two things that meet in several joints of a stay are named once.
void report_joint_findings(const Rig& rig, const Derived& derived, std::string_view slug,
                           CheckReport& report);

} // namespace sheerpole
