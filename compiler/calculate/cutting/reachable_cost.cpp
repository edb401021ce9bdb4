#include "calculate/cutting/reachable_cost.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

namespace sheerpole::cutting {
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

} // namespace sheerpole::cutting
