#include "calculate/cutting/dive.hpp"

#include "calculate/cutting/greedy.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole::cutting {
namespace {

struct Taken {
  std::vector<Pattern> stocks;
  std::vector<std::int64_t> demand; ///< still to be cut
  std::vector<std::int64_t> available;
};

/// Takes the pattern `most` times, or as often as what is left allows.
bool take(Taken& taken, const Pattern& pattern, std::int64_t most) {
  std::int64_t times = std::min(most, taken.available[pattern.kind]);
  for (const auto& [item, count] : pattern.counts)
    times = std::min(times, taken.demand[item] / count);
  for (const auto& [item, count] : pattern.counts)
    taken.demand[item] -= times * count;
  taken.available[pattern.kind] -= times;
  taken.stocks.insert(taken.stocks.end(), static_cast<std::size_t>(times), pattern);
  return times > 0;
}

void complete(const Problem& problem, const Taken& taken, Packing& best) {
  Packing whole = greedy(problem, taken.demand, taken.available);
  whole.stocks.insert(whole.stocks.begin(), taken.stocks.begin(), taken.stocks.end());
  tidy(problem, whole);
  if (ranked_cost(problem, whole) < ranked_cost(problem, best))
    best = std::move(whole);
}

} // namespace

void dive(const Problem& problem, PatternProgram& program, int detour, RankedCost enough, Packing& best,
          std::int64_t& steps) {
  Taken taken;
  for (const Item& item : problem.items)
    taken.demand.push_back(item.demand);
  for (const Kind& kind : problem.kinds)
    taken.available.push_back(kind.available);
  RankedCost spent = 0;
  for (int depth = 1; steps > 0; ++depth) {
    if (std::all_of(taken.demand.begin(), taken.demand.end(), [](std::int64_t n) { return n == 0; }))
      return;
    program.set_rest(taken.demand, taken.available);
    const RankedCost upper = ranked_cost(problem, best);
    const Prices prices = program.generate(upper - spent, steps);
    if (prices.bound > (upper - spent - 1) * prices.scale)
      return;
    const std::vector<FractionalUse> uses = program.uses();
    const std::size_t before = taken.stocks.size();
    for (const FractionalUse& use : uses)
      if (use.stocks > 1 - 1e-6)
        take(taken, program.patterns()[use.pattern],
             static_cast<std::int64_t>(std::floor(use.stocks + 1e-6)));
    if (taken.stocks.size() == before) {
      std::size_t first = depth == detour && uses.size() > 1 ? 1 : 0;
      while (first < uses.size() && !take(taken, program.patterns()[uses[first].pattern], 1))
        ++first;
    }
    if (taken.stocks.size() == before)
      return;
    for (std::size_t s = before; s < taken.stocks.size(); ++s)
      spent += ranked_cost(problem, taken.stocks[s]);
    complete(problem, taken, best);
    if (ranked_cost(problem, best) <= enough)
      return;
  }
}

} // namespace sheerpole::cutting
