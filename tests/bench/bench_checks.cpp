// What all checks take once a rig has been read, and once its lengths have been worked out.

#include "bench/generated_boat.hpp"
#include "bench/one_file.hpp"
#include "calculate/calculate.hpp"
#include "diagnostics/sink.hpp"
#include "rules/check.hpp"
#include "service/compile.hpp"

#include <benchmark/benchmark.h>

#include <string>

namespace sheerpole::bench {
namespace {

void check_all(benchmark::State& state, const Compilation& compilation) {
  if (!compilation.checked) {
    state.SkipWithError("the boat has an error");
    return;
  }
  std::size_t results = 0;
  for (auto _ : state) {
    DiagnosticSink sink;
    results = check(*compilation.rig, *compilation.derived, sink).size();
    benchmark::DoNotOptimize(results);
  }
  state.counters["results"] = static_cast<double>(results);
}

/// The largest of the examples, with all that a boat states.
void checks_of_grisolde(benchmark::State& state) {
  DiskFileReader reader;
  check_all(state, compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/grisolde.rig", reader));
}
BENCHMARK(checks_of_grisolde)->Unit(benchmark::kMicrosecond);

/// Linear in the number of stays when the fitted complexity is N.
void checks_of_stays(benchmark::State& state) {
  OneFile reader(generated_boat(static_cast<std::size_t>(state.range(0))));
  check_all(state, compile("generated.rig", reader));
  state.SetComplexityN(state.range(0));
}
BENCHMARK(checks_of_stays)->Arg(14)->Unit(benchmark::kMicrosecond);
BENCHMARK(checks_of_stays)
    ->RangeMultiplier(2)
    ->Range(250, 4000)
    ->Unit(benchmark::kMillisecond)
    ->Complexity();

/// The same with the lengths, from the rig as it was read.
void lengths_and_checks_of_grisolde(benchmark::State& state) {
  DiskFileReader reader;
  const Compilation compilation = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/grisolde.rig", reader);
  for (auto _ : state) {
    DiagnosticSink sink;
    benchmark::DoNotOptimize(check(*compilation.rig, calculate(*compilation.rig), sink).size());
  }
}
BENCHMARK(lengths_and_checks_of_grisolde)->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace sheerpole::bench
