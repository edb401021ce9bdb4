#pragma once

#include "calculate/derived.hpp"
#include "diagnostics/sink.hpp"

#include <string_view>

namespace sheerpole {

/// Reports the joints at which the comparison of this name found something, at the lower of the two things.
/// Two things that meet in several joints of a stay are named once.
void report_joint_findings(const Rig& rig, const Derived& derived, std::string_view slug,
                           DiagnosticSink& sink);

} // namespace sheerpole
