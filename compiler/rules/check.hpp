#pragma once

#include "calculate/derived.hpp"
#include "diagnostics/sink.hpp"

namespace sheerpole {

/// Runs every check over the rig and what was calculated. The list of checks is in check.cpp.
void check(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

} // namespace sheerpole
