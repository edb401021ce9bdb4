#pragma once

#include "calculate/calculate.hpp"
#include "diagnostics/sink.hpp"
#include "rules/check_table.hpp"
#include "unit/calculate/rig_builder.hpp"

#include <gtest/gtest.h>

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole::build {

/// A number that is stated of something, in SI units, as a drawing gives it.
inline Particular number_fact(std::string name, double si) {
  Particular fact;
  fact.name = std::move(name);
  fact.value.value.si = si;
  fact.value.provenance = from(SourceClass::drawn, 3);
  return fact;
}

/// What one check, by its slug, comes to in a rig; what it finds goes to the sink.
inline std::vector<CheckResult> run_check(std::string_view slug, const Rig& rig, DiagnosticSink& sink) {
  const CheckRow* row = find_check(slug);
  EXPECT_NE(row, nullptr) << slug;
  CheckResults results;
  CheckReport report(slug, rig, sink, results);
  if (row != nullptr)
    row->run(rig, calculate(rig), report);
  return results.all;
}

/// What one check finds in a rig.
inline std::vector<Diagnostic> found_by(std::string_view slug, const Rig& rig) {
  DiagnosticSink sink;
  run_check(slug, rig, sink);
  return sink.all();
}

/// What one check came to in a rig.
inline std::vector<CheckResult> results_of(std::string_view slug, const Rig& rig) {
  DiagnosticSink sink;
  return run_check(slug, rig, sink);
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
