// How boats of the form of tests/reference/statics stand, as one line of JSON for each:
//   standing-states FILE...

#include "unit/statics/reference_case.hpp"

#include <chrono>
#include <cstdio>

namespace {

using namespace sheerpole;

nlohmann::json state_of(const std::string& path) {
  test::ReferenceCase boat = test::reference_case(path);
  auto made = statics::Solver::make(boat.structure);
  if (!made)
    return {{"outcome", "faults"}};
  statics::Solver& solver = made.value();
  const statics::State state = solver.settle();
  constexpr int times = 5;
  const auto began = std::chrono::steady_clock::now();
  for (int i = 0; i < times; ++i)
    solver.settle();
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
  constexpr const char* outcomes[] = {"equilibrium", "mechanism", "unstable", "far away", "not converged"};
  nlohmann::json line{{"outcome", outcomes[static_cast<int>(state.outcome)]},
                      {"steps", state.steps},
                      {"compression_N", state.spars[0].compression_newtons[0]},
                      {"seconds", took.count() / times}};
  for (std::size_t i = 0; i < boat.legs.size(); ++i) {
    const test::ReferenceCase::Leg& leg = boat.legs[i];
    // A line that runs free has its one tension in each of its legs.
    const std::size_t legs = leg.whole ? boat.structure.stays[i].path.size() - 1 : 1;
    for (std::size_t k = 0; k < legs; ++k)
      line["tensions_N"].push_back({leg.stay, leg.leg + k, state.stays[i].tension_newtons});
  }
  for (const auto& [name, node] : boat.nodes) {
    const statics::Vector moved = state.moved_mm[node.index()];
    line["moved_mm"][name] = {moved.x, moved.y, moved.z};
  }
  return line;
}

} // namespace

int main(int count, char** words) {
  for (int i = 1; i < count; ++i)
    std::puts(state_of(words[i]).dump().c_str());
}
