// Cutting from stock: every instance of tests/reference/cutting, to the proven optimum.

#include "calculate/cutting/plan_cutting.hpp"
#include "unit/calculate/cutting/reference_instances.hpp"

#include <benchmark/benchmark.h>

namespace sheerpole::bench {
namespace {

void cut(benchmark::State& state, const test::ReferenceInstance& instance) {
  for (auto _ : state) {
    const CuttingPlan plan = plan_cutting(instance.order);
    if (!plan.proven || plan.totals.stock_mm != instance.optimum_mm)
      state.SkipWithError("not the proven optimum");
  }
  state.SetLabel(instance.name);
}

void cut_from_one_stock_length(benchmark::State& state) {
  cut(state, test::one_stock_length(SHEERPOLE_REFERENCE_DIR).at(static_cast<std::size_t>(state.range(0))));
}
BENCHMARK(cut_from_one_stock_length)->DenseRange(0, 39)->Iterations(3)->Unit(benchmark::kMillisecond);

void cut_from_several_stock_lengths(benchmark::State& state) {
  cut(state,
      test::several_stock_lengths(SHEERPOLE_REFERENCE_DIR).at(static_cast<std::size_t>(state.range(0))));
}
BENCHMARK(cut_from_several_stock_lengths)->DenseRange(0, 7)->Iterations(3)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace sheerpole::bench
