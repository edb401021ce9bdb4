#include "calculate/cutting/pattern_program.hpp"

#include <algorithm>
#include <cmath>
#include <coin/ClpSimplex.hpp>
#include <numeric>

namespace sheerpole::cutting {
namespace {

/// Relative to the cost of the dearest stock: a pattern that betters the linear program by less is not
/// worth adding.
constexpr double least_gain = 1e-9;
constexpr double used = 1e-7;

/// The greatest power of two with which every sum of prices stays below 2^61.
std::int64_t price_scale(const Problem& problem, RankedCost upper) {
  std::int64_t pieces = 1;
  for (const Item& item : problem.items)
    pieces += item.demand;
  const double room =
      std::ldexp(1.0, 60) / static_cast<double>(pieces) / static_cast<double>(upper + problem.rank);
  return room < 1 ? 1 : std::int64_t{1} << std::clamp(std::ilogb(room), 0, 30);
}

} // namespace

PatternProgram::PatternProgram(const Problem& problem, RankedCost upper)
    : problem_(problem), whole_(problem), as_cut_(problem), clp_(std::make_unique<ClpSimplex>()),
      scale_(price_scale(problem, upper)) {
  RankedCost dearest = 0;
  for (const Kind& kind : problem.kinds) {
    available_.push_back(kind.available);
    const std::int64_t at_most = kind.cost + (kind.as_cut ? problem.unit_mm * kind.capacity : 0);
    dearest = std::max(dearest, at_most * problem.rank);
  }
  for (const Item& item : problem.items) {
    demand_.push_back(item.demand);
    if (dearest == 0 || !problem.counts_stocks)
      dearest = std::max(dearest, item.skip_cost * problem.rank);
  }
  cost_unit_ = static_cast<double>(std::max<RankedCost>(dearest, 1));

  clp_->setLogLevel(0);
  const int items = static_cast<int>(problem.items.size());
  const int kinds = static_cast<int>(problem.kinds.size());
  clp_->resize(items + kinds, 0);
  clp_->setOptimizationDirection(1);
  clp_->setPrimalTolerance(1e-9);
  clp_->setDualTolerance(1e-9);
  for (int k = 0; k < kinds; ++k)
    clp_->setRowLower(items + k, -COIN_DBL_MAX);
  for (int i = 0; i < items; ++i) {
    clp_->setRowUpper(i, COIN_DBL_MAX);
    const double one = 1;
    const double cost = static_cast<double>(problem.items[static_cast<std::size_t>(i)].skip_cost) *
                        static_cast<double>(problem.rank) / cost_unit_;
    clp_->addColumn(1, &i, &one, 0, COIN_DBL_MAX, cost);
  }
  set_rest(std::vector(demand_), std::vector(available_));
}

PatternProgram::~PatternProgram() = default;

void PatternProgram::set_rest(std::span<const std::int64_t> demand,
                              std::span<const std::int64_t> available) {
  demand_.assign(demand.begin(), demand.end());
  available_.assign(available.begin(), available.end());
  const std::size_t items = problem_.items.size();
  for (std::size_t i = 0; i < items; ++i)
    clp_->setRowLower(static_cast<int>(i), static_cast<double>(demand_[i]));
  for (std::size_t k = 0; k < problem_.kinds.size(); ++k)
    clp_->setRowUpper(static_cast<int>(items + k), static_cast<double>(available_[k]));
  for (std::size_t p = 0; p < patterns_.size(); ++p)
    clp_->setColumnUpper(static_cast<int>(items + p), fits_rest(patterns_[p]) ? COIN_DBL_MAX : 0);
  rest_changed_ = true;
}

bool PatternProgram::fits_rest(const Pattern& pattern) const {
  return available_[pattern.kind] > 0 &&
         std::all_of(pattern.counts.begin(), pattern.counts.end(),
                     [&](const auto& entry) { return entry.second <= demand_[entry.first]; });
}

void PatternProgram::add(const Pattern& pattern) {
  const auto place = std::lower_bound(sorted_.begin(), sorted_.end(), pattern);
  if (place != sorted_.end() && *place == pattern)
    return;
  sorted_.insert(place, pattern);
  append(pattern);
}

void PatternProgram::append(const Pattern& pattern) {
  std::vector<int> rows;
  std::vector<double> counts;
  for (const auto& [item, count] : pattern.counts) {
    rows.push_back(static_cast<int>(item));
    counts.push_back(static_cast<double>(count));
  }
  rows.push_back(static_cast<int>(problem_.items.size() + pattern.kind));
  counts.push_back(1);
  clp_->addColumn(static_cast<int>(rows.size()), rows.data(), counts.data(), 0,
                  fits_rest(pattern) ? COIN_DBL_MAX : 0,
                  static_cast<double>(ranked_cost(problem_, pattern)) / cost_unit_);
  patterns_.push_back(pattern);
}

void PatternProgram::solve() {
  // After a change of what is left the prices are still right and the amounts are not; after new patterns
  // the other way round.
  if (rest_changed_)
    clp_->dual();
  else
    clp_->primal();
  rest_changed_ = false;
}

Prices PatternProgram::price(std::vector<Pattern>& better, std::int64_t& steps) {
  const std::size_t items = problem_.items.size();
  Prices prices;
  prices.scale = scale_;
  prices.items.resize(items);
  prices.kinds.resize(problem_.kinds.size());
  const double* dual = clp_->dualRowSolution();
  const double to_price = cost_unit_ * static_cast<double>(scale_);
  for (std::size_t i = 0; i < items; ++i) {
    const std::int64_t most = problem_.items[i].skip_cost * problem_.rank * scale_;
    // Rounded down, so that rounding alone never makes a pattern look better than it is.
    const double value = std::floor(dual[i] * to_price);
    prices.items[i] = value <= 0                           ? 0
                      : value >= static_cast<double>(most) ? most
                                                           : static_cast<std::int64_t>(value);
    prices.bound += prices.items[i] * demand_[i];
  }

  std::int64_t longest_whole = -1;
  std::int64_t longest_as_cut = -1;
  for (std::size_t k = 0; k < problem_.kinds.size(); ++k)
    if (available_[k] > 0) {
      std::int64_t& longest = problem_.kinds[k].as_cut ? longest_as_cut : longest_whole;
      longest = std::max(longest, problem_.kinds[k].capacity);
    }
  const std::int64_t before = whole_.cells() + as_cut_.cells();
  if (longest_whole >= 0)
    whole_.fill(prices.items, demand_, longest_whole);
  if (longest_as_cut >= 0) {
    std::vector<std::int64_t> less_cut(prices.items);
    for (std::size_t i = 0; i < items; ++i)
      less_cut[i] -= problem_.items[i].weight * problem_.unit_mm * problem_.rank * scale_;
    as_cut_.fill(less_cut, demand_, longest_as_cut);
  }
  steps -= whole_.cells() + as_cut_.cells() - before;

  prices.converged = true;
  for (std::size_t k = 0; k < problem_.kinds.size(); ++k) {
    if (available_[k] == 0)
      continue;
    const Kind& kind = problem_.kinds[k];
    const Knapsack& knapsack = kind.as_cut ? as_cut_ : whole_;
    const std::int64_t cost = ranked_cost(problem_, Pattern{k, {}}) * scale_;
    const std::int64_t gain = knapsack.best(kind.capacity) - cost;
    prices.kinds[k] = std::min<std::int64_t>(0, -gain);
    prices.bound += prices.kinds[k] * available_[k];
    const double scarcity = dual[items + k] * to_price;
    if (static_cast<double>(gain) + scarcity > least_gain * to_price) {
      prices.converged = false;
      better.push_back({k, knapsack.contents(kind.capacity)});
    }
  }
  return prices;
}

Prices PatternProgram::generate(RankedCost enough, std::int64_t& steps) {
  Prices best;
  for (bool first = true;; first = false) {
    solve();
    // What the linear program costs is not counted by itself; this is about what it takes.
    steps -= static_cast<std::int64_t>((problem_.items.size() + problem_.kinds.size()) *
                                       (patterns_.size() + problem_.items.size())) *
             2;
    std::vector<Pattern> better;
    Prices prices = price(better, steps);
    const bool converged = prices.converged;
    if (first || prices.bound > best.bound)
      best = std::move(prices);
    best.converged = converged;
    const std::size_t known = patterns_.size();
    for (const Pattern& pattern : better)
      add(pattern);
    // Where every better pattern is there already the rest is the rounding of the linear program.
    if (patterns_.size() == known)
      best.converged = true;
    if (best.converged || steps <= 0 || best.bound > (enough - 1) * scale_)
      return best;
  }
}

std::vector<FractionalUse> PatternProgram::uses() const {
  const double* amount = clp_->primalColumnSolution();
  const std::size_t items = problem_.items.size();
  std::vector<FractionalUse> uses;
  // A pattern that was added after the last solution has no amount yet.
  const std::size_t solved =
      std::min(patterns_.size(), static_cast<std::size_t>(clp_->numberColumns()) - items);
  for (std::size_t p = 0; p < solved; ++p)
    if (amount[items + p] > used)
      uses.push_back({p, amount[items + p]});
  std::stable_sort(uses.begin(), uses.end(),
                   [](const FractionalUse& a, const FractionalUse& b) { return a.stocks > b.stocks; });
  return uses;
}

namespace {

/// Lists the patterns of one kind, depth first.
class Lister {
public:
  Lister(const Problem& problem, const Prices& prices, std::size_t kind, std::int64_t slack,
         std::int64_t most_patterns, std::int64_t& steps, std::vector<Pattern>& found)
      : problem_(problem), kind_(problem.kinds[kind]), most_patterns_(most_patterns), steps_(steps),
        found_(found), counts_(problem.items.size()), values_(prices.items), order_(problem.items.size()) {
    pattern_.kind = kind;
    if (kind_.as_cut)
      for (std::size_t i = 0; i < values_.size(); ++i)
        values_[i] -= problem.items[i].weight * problem.unit_mm * problem.rank * prices.scale;
    // A pattern is listed when its value is at least this.
    least_value_ = ranked_cost(problem, Pattern{kind, {}}) * prices.scale - prices.kinds[kind] - slack;
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::stable_sort(order_.begin(), order_.end(),
                     [&](std::size_t a, std::size_t b) { return worth(a) > worth(b); });
    for (const Item& item : problem.items)
      lightest_ = lightest_ == 0 ? item.weight : std::min(lightest_, item.weight);
  }

  /// False when there are too many.
  bool list() { return go(0, kind_.capacity, 0); }

private:
  double worth(std::size_t i) const {
    return static_cast<double>(values_[i]) / static_cast<double>(problem_.items[i].weight);
  }

  bool go(std::size_t depth, std::int64_t room, std::int64_t value) {
    if (--steps_ < 0)
      return false;
    if (depth == order_.size() || room < lightest_)
      return keep(room, value);
    // No piece from here on is worth more for its weight than the next. The margin is far above the
    // rounding of double and far below a mm.
    const double most = std::max(0.0, worth(order_[depth]) * static_cast<double>(room));
    if (static_cast<double>(value) + most + std::abs(most) * 1e-12 + 1 < static_cast<double>(least_value_))
      return true;
    const std::size_t item = order_[depth];
    const std::int64_t weight = problem_.items[item].weight;
    for (std::int64_t count = std::min(problem_.items[item].demand, room / weight); count >= 0; --count) {
      counts_[item] = count;
      if (!go(depth + 1, room - count * weight, value + count * values_[item]))
        return false;
    }
    counts_[item] = 0;
    return true;
  }

  bool keep(std::int64_t room, std::int64_t value) {
    if (value < least_value_)
      return true;
    if (!kind_.as_cut)
      for (std::size_t i = 0; i < counts_.size(); ++i)
        if (counts_[i] < problem_.items[i].demand && problem_.items[i].weight <= room)
          return true;
    pattern_.counts.clear();
    for (std::size_t i = 0; i < counts_.size(); ++i)
      if (counts_[i] > 0)
        pattern_.counts.emplace_back(i, counts_[i]);
    if (pattern_.counts.empty())
      return true;
    if (static_cast<std::int64_t>(found_.size()) >= most_patterns_)
      return false;
    found_.push_back(pattern_);
    return true;
  }

  const Problem& problem_;
  const Kind& kind_;
  std::int64_t most_patterns_;
  std::int64_t& steps_;
  std::vector<Pattern>& found_;
  std::vector<std::int64_t> counts_;
  std::vector<std::int64_t> values_;
  std::vector<std::size_t> order_;
  Pattern pattern_;
  std::int64_t least_value_ = 0;
  std::int64_t lightest_ = 0;
};

} // namespace

std::optional<std::vector<Pattern>> patterns_within(const Problem& problem, const Prices& prices,
                                                    RankedCost most, std::int64_t most_patterns,
                                                    std::int64_t& steps) {
  std::vector<Pattern> found;
  const std::int64_t slack = most * prices.scale - prices.bound;
  for (std::size_t k = 0; k < problem.kinds.size(); ++k)
    if (problem.kinds[k].available > 0 &&
        !Lister(problem, prices, k, slack, most_patterns, steps, found).list())
      return std::nullopt;
  std::sort(found.begin(), found.end());
  return found;
}

} // namespace sheerpole::cutting
