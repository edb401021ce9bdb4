#include "calculate/cutting/problem.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <numeric>

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

namespace {

constexpr std::int32_t never = std::numeric_limits<std::int32_t>::max();
constexpr std::int64_t most_totals = 2'000'000;
constexpr std::int64_t most_bundle_totals = 50'000'000;

} // namespace

ReachableCost::ReachableCost(const Problem& problem, RankedCost upper)
    : rank_(problem.rank), upper_(upper) {
  const std::int64_t upper_cost = upper / rank_;
  std::int64_t step = 0;
  bool only_stocks = problem.counts_stocks;
  for (const Kind& kind : problem.kinds) {
    step = std::gcd(step, kind.cost);
    if (kind.as_cut) {
      step = std::gcd(step, problem.unit_mm);
      only_stocks = false;
    }
  }
  for (const Item& item : problem.items)
    if (item.skip_cost <= upper_cost) {
      step = std::gcd(step, item.skip_cost);
      only_stocks = false;
    }
  step_ = std::max<std::int64_t>(step, 1);
  const std::int64_t totals = upper_cost / step_ + 1;
  if (!only_stocks || totals > most_totals)
    return;

  fewest_stocks_.assign(static_cast<std::size_t>(totals), never);
  fewest_stocks_[0] = 0;
  std::int64_t work = 0;
  for (const Kind& kind : problem.kinds) {
    const std::int64_t cost = kind.cost / step_;
    std::int64_t rest = cost == 0 ? 0 : std::min(kind.available, totals / cost);
    for (std::int64_t count = 1; rest > 0; count *= 2) {
      const std::int64_t taken = std::min(count, rest);
      rest -= taken;
      work += totals;
      for (std::int64_t total = totals - 1; total >= taken * cost; --total) {
        const std::int32_t before = fewest_stocks_[static_cast<std::size_t>(total - taken * cost)];
        std::int32_t& fewest = fewest_stocks_[static_cast<std::size_t>(total)];
        if (before != never)
          fewest = std::min(fewest, before + static_cast<std::int32_t>(taken));
      }
    }
    if (work > most_bundle_totals) {
      fewest_stocks_.clear();
      return;
    }
  }
}

RankedCost ReachableCost::at_least(RankedCost bound) const {
  if (bound >= upper_)
    return upper_;
  bound = std::max<RankedCost>(bound, 0);
  for (std::int64_t i = bound / rank_ / step_; i * step_ <= upper_ / rank_; ++i) {
    const std::int64_t cost = i * step_;
    if (cost * rank_ + rank_ - 1 < bound)
      continue;
    if (fewest_stocks_.empty())
      return std::min(upper_, std::max(bound, cost * rank_));
    const std::int32_t fewest = fewest_stocks_[static_cast<std::size_t>(i)];
    if (fewest < rank_)
      return std::min(upper_, std::max(bound, cost * rank_ + fewest));
  }
  return upper_;
}

Knapsack::Knapsack(const Problem& problem) : problem_(problem) {}

void Knapsack::fill(std::span<const std::int64_t> values, std::span<const std::int64_t> limits,
                    std::int64_t capacity) {
  bundles_.clear();
  const auto width = static_cast<std::size_t>(capacity) + 1;
  best_.assign(width, 0);
  std::vector<std::int64_t> bundle_value;
  for (std::size_t i = 0; i < problem_.items.size(); ++i) {
    const std::int64_t weight = problem_.items[i].weight;
    if (values[i] <= 0)
      continue;
    std::int64_t rest = std::min(limits[i], capacity / weight);
    for (std::int64_t count = 1; rest > 0; count *= 2) {
      const std::int64_t taken = std::min(count, rest);
      bundles_.push_back({i, taken, weight * taken});
      bundle_value.push_back(values[i] * taken);
      rest -= taken;
    }
  }
  taken_.assign(bundles_.size() * width, false);
  cells_ += static_cast<std::int64_t>((bundles_.size() + 1) * width);
  for (std::size_t b = 0; b < bundles_.size(); ++b) {
    const auto weight = static_cast<std::size_t>(bundles_[b].weight);
    const std::int64_t value = bundle_value[b];
    for (std::size_t c = width; c-- > weight;) {
      const std::int64_t with = best_[c - weight] + value;
      if (with > best_[c]) {
        best_[c] = with;
        taken_[b * width + c] = true;
      }
    }
  }
}

std::vector<std::pair<std::size_t, std::int64_t>> Knapsack::contents(std::int64_t capacity) const {
  const std::size_t width = best_.size();
  auto c = static_cast<std::size_t>(capacity);
  std::map<std::size_t, std::int64_t> counts;
  for (std::size_t b = bundles_.size(); b-- > 0;)
    if (taken_[b * width + c]) {
      counts[bundles_[b].item] += bundles_[b].count;
      c -= static_cast<std::size_t>(bundles_[b].weight);
    }
  return {counts.begin(), counts.end()};
}

} // namespace sheerpole::cutting
