// How long it takes to find how a ketch stands: 15 stays, two masts, spreaders pinned or built in.

#include "statics/solver.hpp"

#include <benchmark/benchmark.h>

#include <cstdint>
#include <utility>

namespace sheerpole::bench {
namespace {

using statics::drawn_length_mm;
using statics::fixed_point;
using statics::Hold;
using statics::NodeId;
using statics::Outcome;
using statics::pinned_heel;
using statics::SearchBounds;
using statics::Solver;
using statics::Spar;
using statics::State;
using statics::Stay;
using statics::Structure;
using statics::Turning;
using statics::Vector;

class Ketch {
public:
  explicit Ketch(bool pinned) : pinned_(pinned) {
    const NodeId main = mast(0.0, 1500.0, 13500.0, 1.0), mizzen = mast(-5200.0, 1200.0, 9000.0, 0.45);
    stay({main, anchor(4100.0, 0.0, 1300.0)}, 4.1e6, 14.0);
    stay({main, mizzen}, 2.3e6, 7.0);
    stay({mizzen, anchor(-8300.0, 0.0, 1000.0)}, 2.3e6, 14.0);
  }
  Structure structure;

private:
  NodeId node(double x, double y, double z) {
    structure.nodes.push_back({{x, y, z}});
    return {static_cast<std::uint32_t>(structure.nodes.size() - 1)};
  }
  NodeId anchor(double x, double y, double z) {
    const NodeId place = node(x, y, z);
    structure.supports.push_back(fixed_point(place));
    return place;
  }
  void stay(std::vector<NodeId> path, double axial, double shorter_mm) {
    Stay line{std::move(path), axial, 0.0};
    line.unstressed_mm = drawn_length_mm(structure, line) - shorter_mm;
    structure.stays.push_back(std::move(line));
  }
  /// A mast with six stays of its own; its masthead.
  NodeId mast(double x, double deck, double top, double stout) {
    const NodeId heel = node(x, 0.0, deck - 1700.0), partners = node(x, 0.0, deck);
    const NodeId root = node(x - 100.0, 0.0, deck + 0.52 * (top - deck)), head = node(x - 200.0, 0.0, top);
    structure.supports.push_back(pinned_heel(heel));
    structure.supports.push_back({partners, {Hold{}, Hold{}, std::nullopt}, Turning::free});
    structure.spars.push_back({{heel, partners, root, head},
                               {{0.0, {1.1e8, 3e11 * stout, 1.8e11 * stout, 4e12 * stout}}},
                               {1.0, 0.0, 0.0},
                               {}});
    for (const double side : {1.0, -1.0}) {
      const Vector at = structure.nodes[root.index()].place_mm;
      const NodeId tip = node(at.x - 60.0, side * 850.0, at.z + 50.0);
      Spar spreader{{root, tip}, {{0.0, {3e7, 6e9, 1.1e10, 1.5e11}}}, {0.0, 0.0, 1.0}, {}, 2};
      spreader.root = {pinned_, pinned_, pinned_};
      structure.spars.push_back(spreader);
      stay({head, tip}, 3.2e6 * stout, 0.0);
      stay({tip, anchor(x - 100.0, side * 1150.0, deck)}, 3.2e6 * stout, 27.0);
      stay({root, anchor(x + 500.0, side * 1100.0, deck)}, 2.3e6 * stout, 7.0);
      stay({root, anchor(x - 700.0, side * 1100.0, deck)}, 2.3e6 * stout, 6.0);
    }
    return head;
  }

  bool pinned_;
};

Solver ketch(benchmark::State& state) {
  return std::move(Solver::make(Ketch(state.range(0) == 1).structure).value());
}

void expect_equilibrium(benchmark::State& state, const State& found) {
  if (found.outcome != Outcome::equilibrium)
    state.SkipWithError("no equilibrium");
}

/// Made ready and found from the drawn geometry.
void statics_state(benchmark::State& state) {
  const Structure structure = Ketch(state.range(0) == 1).structure;
  State found;
  for (auto _ : state)
    found = Solver::make(structure).value().settle();
  expect_equilibrium(state, found);
  state.counters["steps"] = static_cast<double>(found.steps);
}
BENCHMARK(statics_state)->ArgName("pinned")->Arg(0)->Arg(1)->Unit(benchmark::kMicrosecond);

void statics_influence(benchmark::State& state) {
  Solver solver = ketch(state);
  const State found = solver.settle();
  for (auto _ : state)
    if (!solver.influence(found))
      state.SkipWithError("no influence");
}
BENCHMARK(statics_influence)->ArgName("pinned")->Arg(0)->Arg(1)->Unit(benchmark::kMicrosecond);

/// A turn more on one stay after the other, each found from the state before.
void statics_variant(benchmark::State& state) {
  Solver solver = ketch(state);
  const State found = solver.settle();
  const SearchBounds bounds{.look_for_softest = false};
  std::size_t turned = 0;
  for (auto _ : state) {
    std::vector<double> lengths = found.unstressed_mm;
    lengths[turned++ % lengths.size()] -= 1.5;
    expect_equilibrium(state, solver.settle(lengths, bounds, &found.configuration));
  }
}
BENCHMARK(statics_variant)->ArgName("pinned")->Arg(0)->Arg(1)->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace sheerpole::bench
