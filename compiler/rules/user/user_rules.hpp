#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"

namespace sheerpole {

/// The rules that the files state, each a check under its own name and severity.
void check_user_rules(const Rig& rig, const Derived& derived, DiagnosticSink& sink,
                      std::vector<CheckResult>& results);

} // namespace sheerpole
