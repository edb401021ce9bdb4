#include "calculate/cutting/pattern_list.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace sheerpole::cutting {
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
