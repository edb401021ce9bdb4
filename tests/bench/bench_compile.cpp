// Warm speed of parsing and of the whole way from text to checked rig, in one process.

#include "bench/generated_boat.hpp"
#include "bench/one_file.hpp"
#include "diagnostics/sink.hpp"
#include "driver/built_in_backends.hpp"
#include "service/compile.hpp"
#include "syntax/parse.hpp"

#include <benchmark/benchmark.h>

#include <string>

namespace sheerpole::bench {
namespace {

void parse_warm(benchmark::State& state) {
  const SourceText source({}, "generated.rig", generated_boat(static_cast<std::size_t>(state.range(0))));
  for (auto _ : state) {
    DiagnosticSink sink;
    const SyntaxTree tree = parse(source, sink);
    benchmark::DoNotOptimize(tree.statements.data());
    if (sink.has_errors())
      state.SkipWithError("the generated boat has an error");
  }
  state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * source.bytes().size()));
}
BENCHMARK(parse_warm)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

/// Linear in the number of stays when the fitted complexity is N.
void compile_stays(benchmark::State& state) {
  OneFile reader(generated_boat(static_cast<std::size_t>(state.range(0))));
  for (auto _ : state) {
    const Compilation compilation = compile("generated.rig", reader);
    if (!compilation.checked)
      state.SkipWithError("the generated boat has an error");
  }
  state.SetComplexityN(state.range(0));
}
BENCHMARK(compile_stays)->RangeMultiplier(2)->Range(250, 4000)->Unit(benchmark::kMillisecond)->Complexity();

void build_stays(benchmark::State& state) {
  OneFile reader(generated_boat(static_cast<std::size_t>(state.range(0))));
  const Compilation compilation = compile("generated.rig", reader);
  if (!compilation.checked) {
    state.SkipWithError("the generated boat has an error");
    return;
  }
  for (auto _ : state)
    for (const auto& backend : usual_backends())
      benchmark::DoNotOptimize(backend->generate({*compilation.checked}).files.size());
  state.SetComplexityN(state.range(0));
}
BENCHMARK(build_stays)->RangeMultiplier(2)->Range(125, 1000)->Unit(benchmark::kMillisecond)->Complexity();

void check_pellimoor(benchmark::State& state) {
  DiskFileReader reader;
  const std::string path = std::string(SHEERPOLE_EXAMPLES_DIR) + "/pellimoor.rig";
  for (auto _ : state) {
    const Compilation compilation = compile(path, reader);
    if (!compilation.checked)
      state.SkipWithError("the example boat has an error");
  }
}
BENCHMARK(check_pellimoor)->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace sheerpole::bench
