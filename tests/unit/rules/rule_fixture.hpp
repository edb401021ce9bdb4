#pragma once

#include "calculate/calculate.hpp"
#include "diagnostics/sink.hpp"
#include "rules/checks.hpp"
#include "unit/calculate/rig_builder.hpp"

#include <string>
#include <vector>

namespace sheerpole::build {

using Check = void (*)(const Rig&, const Derived&, DiagnosticSink&);

/// What one check finds in a rig.
inline std::vector<Diagnostic> found_by(Check check, const Rig& rig) {
  DiagnosticSink sink;
  check(rig, calculate(rig), sink);
  return sink.all();
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
