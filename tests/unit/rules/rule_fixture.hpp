#pragma once

#include "calculate/calculate.hpp"
#include "diagnostics/sink.hpp"
#include "rules/adjuster_checks.hpp"
#include "rules/geometry_checks.hpp"
#include "rules/joint_checks.hpp"
#include "rules/length_checks.hpp"
#include "rules/record_checks.hpp"
#include "rules/securing_checks.hpp"
#include "rules/splice_checks.hpp"
#include "rules/strength_checks.hpp"
#include "unit/calculate/rig_builder.hpp"

#include <string>
#include <vector>

namespace sheerpole::build {

using Check = void (*)(const Rig&, const Derived&, CheckReport&);

/// What one check finds in a rig.
inline std::vector<Diagnostic> found_by(Check check, const Rig& rig) {
  DiagnosticSink sink;
  std::vector<CheckResult> results;
  CheckReport report("", sink, results);
  check(rig, calculate(rig), report);
  return sink.all();
}

/// What one check came to in a rig.
inline std::vector<CheckResult> results_of(Check check, const Rig& rig) {
  DiagnosticSink sink;
  std::vector<CheckResult> results;
  CheckReport report("", sink, results);
  check(rig, calculate(rig), report);
  return results;
}

/// A stay on port and starboard that are alike.
inline void add_pair(RigBuilder& builder, const Stay& made) {
  for (const Side side : {Side::port, Side::starboard}) {
    Stay one = made;
    one.side = side;
    one.name = made.base + "." + std::string(name_of(side));
    builder.add(std::move(one));
  }
}

} // namespace sheerpole::build
