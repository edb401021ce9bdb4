#include "calculate/cutting/search.hpp"

#include "calculate/cutting/integer_program.hpp"
#include "calculate/cutting/pattern_program.hpp"
#include "calculate/cutting/problem.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <optional>

namespace sheerpole::cutting {
namespace {

constexpr int dives = 6;
constexpr std::int64_t bound_parts = 50;

/// Every packing costs at least what its pieces take of the stock that is cheapest for its length.
std::int64_t material_bound(const Problem& problem) {
  double cheapest = -1;
  for (const Kind& kind : problem.kinds) {
    const double rate = static_cast<double>(kind.cost) / static_cast<double>(kind.capacity) +
                        (kind.as_cut ? static_cast<double>(problem.unit_mm) : 0);
    if (cheapest < 0 || rate < cheapest)
      cheapest = rate;
  }
  double bound = 0;
  for (const Item& item : problem.items) {
    const double skipped = static_cast<double>(item.skip_cost);
    const double each =
        cheapest < 0 ? skipped : std::min(cheapest * static_cast<double>(item.weight), skipped);
    bound += each * static_cast<double>(item.demand);
  }
  // A millionth is far above the rounding; so much is given away.
  return std::max<std::int64_t>(0,
                                static_cast<std::int64_t>(std::ceil(bound - 1e-6 * std::max(bound, 1.0))));
}

bool is_too_large(const Problem& problem, const CuttingLimits& limits, RankedCost upper) {
  std::int64_t longest = 0;
  for (const Kind& kind : problem.kinds)
    longest = std::max(longest, kind.capacity);
  std::int64_t pieces = 0;
  std::int64_t bundles = 0;
  for (const Item& item : problem.items) {
    pieces += item.demand;
    const std::int64_t together = std::min(item.demand, longest / item.weight);
    bundles += static_cast<std::int64_t>(std::bit_width(static_cast<std::uint64_t>(together)));
  }
  return pieces > limits.most_pieces || bundles * (longest + 1) > limits.most_knapsack_cells ||
         static_cast<double>(upper + problem.rank) * static_cast<double>(pieces + 1) > std::ldexp(1.0, 59);
}

class Search {
public:
  Search(const Problem& problem, const CuttingLimits& limits, const std::optional<Packing>& start)
      : problem_(problem), limits_(limits), steps_(limits.steps) {
    for (const Item& item : problem.items)
      demand_.push_back(item.demand);
    for (const Kind& kind : problem.kinds)
      available_.push_back(kind.available);
    best_ = greedy(problem, demand_, available_);
    if (start && ranked_cost(problem, *start) < upper())
      best_ = *start;
  }

  SearchResult run() {
    SearchResult result;
    result.too_large = is_too_large(problem_, limits_, upper());
    reachable_.emplace(problem_, upper());
    raise(material_bound(problem_) * problem_.rank);
    if (!result.too_large) {
      program_.emplace(problem_, upper());
      bound();
      for (int detour = 0; detour < dives && open(); ++detour)
        dive(problem_, *program_, detour, lower_, best_, steps_);
      if (cost_open())
        mix();
      if (open())
        exact();
      if (!all_)
        list_all();
      result.all_patterns = all_.has_value();
      if (all_)
        result.patterns = std::move(*all_);
      else
        result.patterns = program_->patterns();
    }
    result.lower_cost = lower_ / problem_.rank;
    result.cost_proven = result.lower_cost == cost_of(problem_, best_);
    result.packing = std::move(best_);
    return result;
  }

private:
  RankedCost upper() const { return ranked_cost(problem_, best_); }
  bool open() const { return lower_ < upper() && steps_ > 0; }
  bool cost_open() const { return lower_ / problem_.rank < cost_of(problem_, best_) && steps_ > 0; }

  /// The greatest ranked cost of the same cost, but not above the known packing.
  RankedCost end_of_cost(RankedCost ranked) const {
    return std::min(upper(), ranked / problem_.rank * problem_.rank + problem_.rank - 1);
  }

  void raise(RankedCost bound) { lower_ = std::max(lower_, reachable_->at_least(bound)); }

  void take(const IntegerSolution& solution) {
    if (solution.packing && ranked_cost(problem_, *solution.packing) < upper())
      best_ = *solution.packing;
  }

  void bound() {
    for (const Pattern& pattern : best_.stocks)
      program_->add(pattern);
    // In parts: between two of them it shows whether the bound is raised to the known packing already. The
    // first is run anyhow, for prices that tell which packings are equally good.
    do {
      std::int64_t part = std::min(steps_, limits_.steps / bound_parts);
      steps_ -= part;
      prices_ = program_->generate(upper() + problem_.rank, part);
      steps_ += part;
      raise((prices_.bound + prices_.scale - 1) / prices_.scale);
    } while (open() && !prices_.converged);
  }

  /// The best that can be mixed from the patterns known so far.
  void mix() {
    for (const Pattern& pattern : best_.stocks)
      program_->add(pattern);
    const std::int64_t cost = cost_of(problem_, best_);
    take(solve_integer(problem_, program_->patterns(), Aim::cost, cost - 1, lower_ / problem_.rank,
                       limits_.nodes / 10));
  }

  /// Lists every pattern that a packing of at most a target may use, and solves for those; without a
  /// solution the bound rises above the target. The first target is the bound, which needs the fewest
  /// patterns; then the known packing if there are not too many patterns, else nearer to the bound.
  void exact() {
    for (bool first = true; open(); first = false) {
      std::optional<std::vector<Pattern>> patterns;
      RankedCost target = first ? end_of_cost(lower_) : upper();
      for (int halvings = 0; halvings < 8; ++halvings) {
        std::int64_t steps = std::min(steps_, limits_.patterns * 200);
        const std::int64_t given = steps;
        patterns = patterns_within(problem_, prices_, target, limits_.patterns, steps);
        steps_ -= given - std::max<std::int64_t>(steps, 0);
        if (patterns || target <= end_of_cost(lower_))
          break;
        target = end_of_cost(halvings == 6 ? lower_ : lower_ + (target - lower_) / 2);
      }
      if (!patterns || !solve_listed(*patterns, target))
        return;
      if (target >= upper()) {
        all_ = std::move(patterns);
        return;
      }
    }
  }

  /// For the choice among equals only, so less is spent on it.
  void list_all() {
    std::int64_t steps = limits_.patterns * 20;
    all_ = patterns_within(problem_, prices_, upper(), limits_.patterns / 10, steps);
  }

  /// False when the integer program was cut short.
  bool solve_listed(const std::vector<Pattern>& patterns, RankedCost target) {
    std::int64_t most_cost = target / problem_.rank;
    if (cost_open()) {
      const bool known = most_cost >= cost_of(problem_, best_);
      const IntegerSolution solution =
          solve_integer(problem_, patterns, Aim::cost, known ? cost_of(problem_, best_) - 1 : most_cost,
                        lower_ / problem_.rank, limits_.nodes);
      take(solution);
      if (!solution.finished)
        return false;
      if (!known && !solution.packing) {
        raise(target + 1);
        return true;
      }
      raise(cost_of(problem_, best_) * problem_.rank);
    }
    if (!problem_.counts_stocks || !open())
      return true;
    most_cost = cost_of(problem_, best_);
    const auto stocks = static_cast<std::int64_t>(best_.stocks.size());
    if (stocks > 1) {
      const IntegerSolution solution = solve_integer(problem_, patterns, Aim::stocks_begun, most_cost,
                                                     lower_ - most_cost * problem_.rank, limits_.nodes);
      take(solution);
      if (!solution.finished)
        return false;
    }
    if (target >= upper())
      raise(upper());
    return true;
  }

  const Problem& problem_;
  const CuttingLimits& limits_;
  std::int64_t steps_;
  std::vector<std::int64_t> demand_;
  std::vector<std::int64_t> available_;
  Packing best_;
  RankedCost lower_ = 0;
  Prices prices_;
  std::optional<ReachableCost> reachable_;
  std::optional<PatternProgram> program_;
  std::optional<std::vector<Pattern>> all_;
};

} // namespace

SearchResult search(const Problem& problem, const CuttingLimits& limits,
                    const std::optional<Packing>& start) {
  return Search(problem, limits, start).run();
}

} // namespace sheerpole::cutting
