#pragma once

#include "calculate/derived.hpp"
#include "diagnostics/check_result.hpp"
#include "diagnostics/sink.hpp"
#include "rules/check_report.hpp"

#include <vector>

namespace sheerpole {

/// Runs every check of all_checks() and the rules of the files over the rig and what was calculated, then
/// the waivers. Findings go to the sink; what each check came to is returned, check by check.
CheckResults check(const Rig& rig, const Derived& derived, DiagnosticSink& sink,
                   Wanted wanted = Wanted::words);

} // namespace sheerpole
