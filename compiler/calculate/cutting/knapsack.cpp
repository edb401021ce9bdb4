#include "calculate/cutting/knapsack.hpp"

#include <algorithm>
#include <map>

namespace sheerpole::cutting {

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
