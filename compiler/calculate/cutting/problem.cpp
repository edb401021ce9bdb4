#include "calculate/cutting/problem.hpp"

#include <algorithm>

namespace sheerpole::cutting {
namespace {

void drop_surplus(const Problem& problem, Packing& packing) {
  std::vector<std::int64_t> surplus(problem.items.size());
  for (std::size_t i = 0; i < problem.items.size(); ++i)
    surplus[i] = packing.skipped[i] - problem.items[i].demand;
  for (const Pattern& pattern : packing.stocks)
    for (const auto& [item, count] : pattern.counts)
      surplus[item] += count;
  for (std::size_t i = 0; i < problem.items.size(); ++i) {
    const std::int64_t unskipped = std::clamp<std::int64_t>(surplus[i], 0, packing.skipped[i]);
    packing.skipped[i] -= unskipped;
    surplus[i] -= unskipped;
  }
  if (std::all_of(surplus.begin(), surplus.end(), [](std::int64_t n) { return n <= 0; }))
    return;

  std::vector<std::pair<std::int64_t, std::size_t>> emptiest;
  for (std::size_t s = 0; s < packing.stocks.size(); ++s) {
    const Pattern& pattern = packing.stocks[s];
    emptiest.emplace_back(weight_of(problem, pattern) - problem.kinds[pattern.kind].capacity, s);
  }
  std::sort(emptiest.begin(), emptiest.end());
  for (const auto& [fill, s] : emptiest)
    for (auto& [item, count] : packing.stocks[s].counts) {
      const std::int64_t less = std::clamp<std::int64_t>(surplus[item], 0, count);
      count -= less;
      surplus[item] -= less;
    }
  for (Pattern& pattern : packing.stocks)
    std::erase_if(pattern.counts, [](const auto& entry) { return entry.second == 0; });
}

void move_to_cheaper_kinds(const Problem& problem, Packing& packing) {
  std::vector<std::int64_t> free(problem.kinds.size());
  for (std::size_t k = 0; k < problem.kinds.size(); ++k)
    free[k] = problem.kinds[k].available;
  for (const Pattern& pattern : packing.stocks)
    --free[pattern.kind];
  for (bool moved = true; moved;) {
    moved = false;
    for (Pattern& pattern : packing.stocks) {
      const std::int64_t weight = weight_of(problem, pattern);
      Pattern best = pattern;
      for (std::size_t k = 0; k < problem.kinds.size(); ++k) {
        Pattern other = pattern;
        other.kind = k;
        if (free[k] > 0 && problem.kinds[k].capacity >= weight &&
            cost_of(problem, other) < cost_of(problem, best))
          best = std::move(other);
      }
      if (best.kind != pattern.kind) {
        ++free[pattern.kind];
        --free[best.kind];
        pattern = std::move(best);
        moved = true;
      }
    }
  }
}

} // namespace

std::int64_t weight_of(const Problem& problem, const Pattern& pattern) {
  std::int64_t weight = 0;
  for (const auto& [item, count] : pattern.counts)
    weight += problem.items[item].weight * count;
  return weight;
}

std::int64_t cost_of(const Problem& problem, const Pattern& pattern) {
  const Kind& kind = problem.kinds[pattern.kind];
  return kind.cost + (kind.as_cut ? problem.unit_mm * weight_of(problem, pattern) : 0);
}

std::int64_t cost_of(const Problem& problem, const Packing& packing) {
  std::int64_t cost = 0;
  for (const Pattern& pattern : packing.stocks)
    cost += cost_of(problem, pattern);
  for (std::size_t i = 0; i < problem.items.size(); ++i)
    cost += problem.items[i].skip_cost * packing.skipped[i];
  return cost;
}

RankedCost ranked_cost(const Problem& problem, const Pattern& pattern) {
  return cost_of(problem, pattern) * problem.rank + (problem.counts_stocks ? 1 : 0);
}

RankedCost ranked_cost(const Problem& problem, const Packing& packing) {
  return cost_of(problem, packing) * problem.rank +
         (problem.counts_stocks ? static_cast<std::int64_t>(packing.stocks.size()) : 0);
}

void tidy(const Problem& problem, Packing& packing) {
  drop_surplus(problem, packing);
  std::erase_if(packing.stocks, [](const Pattern& pattern) { return pattern.counts.empty(); });
  move_to_cheaper_kinds(problem, packing);
}

} // namespace sheerpole::cutting
