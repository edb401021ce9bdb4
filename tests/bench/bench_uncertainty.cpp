// How long it takes to say how well every cut of a boat of fourteen stays is known.

#include "calculate/calculate.hpp"
#include "calculate/uncertainty/response.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"

#include <benchmark/benchmark.h>

#include <string>
#include <thread>
#include <vector>

namespace sheerpole::bench {
namespace {

class OneText final : public FileReader {
public:
  explicit OneText(std::string text) : text_(std::move(text)) {}
  Result<std::string, Failure> read(const std::string&, std::size_t) override { return text_; }

private:
  std::string text_;
};

/// Seven pairs of stays over one spreader, every point, part, splice and setting with a bound.
std::string boat_with_bounds(std::size_t draws) {
  std::string text = "language 1\n"
                     "rope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n"
                     "  diameter: 9 mm ± 0.3 mm\n}\n"
                     "splice long-bury {\n  bury: 72 d\n  eye-allowance: 12 d ± 1 d\n"
                     "  contraction: 8 % ± 2 %\n  recovered: 50 % ± 10 %\n}\n"
                     "thimble thimble-16 {\n  length: 16 mm ± 0.5 mm\n}\n"
                     "lashing cord-4 {\n  shortest: 60 mm\n  longest: 260 mm\n}\n"
                     "uncertainty {\n  draws: " +
                     std::to_string(draws) + "\n}\n";
  for (int i = 1; i <= 7; ++i) {
    const std::string n = std::to_string(i);
    text += "points {\n  tang-" + n + ": (0, 0.1, 1" + n + ") m ± 3 mm mirrored\n  tip-" + n +
            ": (-0.2, 0.9, " + n + ".5) m ± 3 mm mirrored\n  plate-" + n + ": (-0." + n +
            ", 1.4, 1) m ± 5 mm mirrored\n}\n";
    text += "stay shroud-" + n + " {\n  sides: port, starboard\n  path: tang-" + n + " > tip-" + n +
            " free > plate-" + n +
            "\n  line: hmpe-9\n  stack {\n    thimble-16 (splice: long-bury)\n    line\n"
            "    thimble-16 (splice: long-bury)\n    cord-4 (gap: 160 mm ± 2 mm, passes: 6)\n  }\n}\n";
  }
  return text;
}

Compilation boat(benchmark::State& state, std::size_t draws) {
  OneText reader(boat_with_bounds(draws));
  Compilation compilation = compile("bounds.rig", reader);
  if (!compilation.rig || compilation.rig->stays.size() != 14)
    state.SkipWithError("the boat has an error");
  return compilation;
}

/// Everything that is worked out of the boat, with so many draws.
void calculate_with_draws(benchmark::State& state) {
  const Compilation compilation = boat(state, static_cast<std::size_t>(state.range(0)));
  for (auto _ : state)
    benchmark::DoNotOptimize(calculate(*compilation.rig).stays.data());
}
BENCHMARK(calculate_with_draws)->Arg(1000)->Arg(100'000)->UseRealTime()->Unit(benchmark::kMillisecond);

/// The draws alone: fourteen lengths of fifteen inputs each, out of sixty.
void draw_fourteen_lengths(benchmark::State& state) {
  std::vector<UncertainInput> inputs(60);
  for (std::size_t i = 0; i < inputs.size(); ++i) {
    inputs[i].bound = 1.0;
    inputs[i].distribution = i % 4 == 3 ? Distribution::normal_at_two : Distribution::rectangular;
  }
  std::vector<Response> responses(14);
  for (std::size_t r = 0; r < responses.size(); ++r) {
    for (std::size_t i = 0; i < 15; ++i)
      responses[r].linear.push_back({(r * 4 + i) % inputs.size(), 1.0});
    responses[r].products.push_back({0, 1, 0.1});
  }
  std::vector<DrawRequest> requests;
  for (const Response& response : responses)
    requests.push_back({&response, -5.0, 5.0});
  const unsigned threads = std::thread::hardware_concurrency();
  for (auto _ : state)
    benchmark::DoNotOptimize(monte_carlo(requests, inputs, 100'000, 1, threads).data());
}
BENCHMARK(draw_fourteen_lengths)->UseRealTime()->Unit(benchmark::kMillisecond);

} // namespace
} // namespace sheerpole::bench
