#include "calculate/cutting/search.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

namespace sheerpole::cutting {
namespace {

/// Twice as wide as any number of a problem; not a long double, of which each platform has another.
__extension__ using Wide = __int128;

/// Which kind to begin next.
enum class Begin { cheapest_for_its_length, longest, shortest, shortest_for_all_the_rest };

struct Rest {
  std::vector<std::int64_t> available;
  std::int64_t weight; ///< not yet in a stock
};

std::optional<std::size_t> next_kind(const Problem& problem, Begin begin, const Rest& rest,
                                     std::int64_t weight) {
  std::optional<std::size_t> chosen;
  const auto better = [&](std::size_t k) {
    if (!chosen)
      return true;
    const Kind& a = problem.kinds[k];
    const Kind& b = problem.kinds[*chosen];
    switch (begin) {
    case Begin::longest:
      return a.capacity > b.capacity;
    case Begin::shortest:
      return a.capacity < b.capacity;
    case Begin::shortest_for_all_the_rest:
      if ((a.capacity >= rest.weight) != (b.capacity >= rest.weight))
        return a.capacity >= rest.weight;
      if (a.capacity >= rest.weight)
        return a.cost < b.cost;
      [[fallthrough]];
    case Begin::cheapest_for_its_length:
      break;
    }
    // Lengths and costs are below 2^40, and their products are held whole.
    return static_cast<Wide>(a.cost) * b.capacity < static_cast<Wide>(b.cost) * a.capacity;
  };
  for (std::size_t k = 0; k < problem.kinds.size(); ++k)
    if (rest.available[k] > 0 && problem.kinds[k].capacity >= weight && better(k))
      chosen = k;
  return chosen;
}

Packing best_fit(const Problem& problem, std::span<const std::int64_t> demand,
                 std::span<const std::int64_t> available, Begin begin) {
  Packing packing;
  packing.skipped.assign(problem.items.size(), 0);
  Rest rest{{available.begin(), available.end()}, 0};
  for (std::size_t i = 0; i < problem.items.size(); ++i)
    rest.weight += problem.items[i].weight * demand[i];
  std::multimap<std::int64_t, std::size_t> by_room; // room left, stock
  for (std::size_t i = 0; i < problem.items.size(); ++i) {
    const std::int64_t weight = problem.items[i].weight;
    for (std::int64_t left = demand[i]; left > 0;) {
      auto place = by_room.lower_bound(weight);
      if (place == by_room.end()) {
        const auto kind = next_kind(problem, begin, rest, weight);
        if (!kind) {
          packing.skipped[i] += left;
          rest.weight -= left * weight;
          break;
        }
        --rest.available[*kind];
        place = by_room.emplace(problem.kinds[*kind].capacity, packing.stocks.size());
        packing.stocks.push_back({*kind, {}});
      }
      const auto [room, stock] = *place;
      const std::int64_t count = std::min(left, room / weight);
      by_room.erase(place);
      by_room.emplace(room - count * weight, stock);
      packing.stocks[stock].counts.emplace_back(i, count);
      left -= count;
      rest.weight -= count * weight;
    }
  }
  return packing;
}

} // namespace

Packing greedy(const Problem& problem, std::span<const std::int64_t> demand,
               std::span<const std::int64_t> available) {
  constexpr std::array begins{Begin::shortest_for_all_the_rest, Begin::cheapest_for_its_length,
                              Begin::longest, Begin::shortest};
  // Moving to cheaper kinds must not take what the caller has used already.
  Problem rest = problem;
  for (std::size_t i = 0; i < rest.items.size(); ++i)
    rest.items[i].demand = demand[i];
  for (std::size_t k = 0; k < rest.kinds.size(); ++k)
    rest.kinds[k].available = available[k];
  std::optional<Packing> best;
  for (const Begin begin : begins) {
    Packing packing = best_fit(rest, demand, available, begin);
    tidy(rest, packing);
    if (!best || ranked_cost(rest, packing) < ranked_cost(rest, *best))
      best = std::move(packing);
    if (rest.kinds.size() < 2)
      break;
  }
  return *best;
}

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
