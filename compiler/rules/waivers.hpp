#pragma once

#include "diagnostics/check_result.hpp"
#include "diagnostics/sink.hpp"
#include "model/rig.hpp"

#include <vector>

namespace sheerpole {

/// Marks the findings that are waived, and their results. Errors are not waived; a waiver that is over by
/// the boat's report date, or that speaks of no finding, is said. Comes last.
void apply_waivers(const Rig& rig, DiagnosticSink& sink, std::vector<CheckResult>& results);

} // namespace sheerpole
