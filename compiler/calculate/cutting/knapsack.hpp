#pragma once

#include "calculate/cutting/problem.hpp"

#include <cstdint>
#include <span>
#include <vector>

namespace sheerpole::cutting {

/// The bounded knapsack: which of the items, at most so many of each, are worth most within a capacity. By
/// dynamic programming over every capacity at once; a count is split into powers of two. Time and memory
/// grow with the sum of the logarithms of the counts times the largest capacity: 8 bytes for each capacity
/// and one bit for each cell. Source: textbook method (H. Kellerer, U. Pferschy, D. Pisinger, "Knapsack
/// Problems", 2004, chapter 7), from memory.
class Knapsack {
public:
  explicit Knapsack(const Problem& problem);

  /// Works the table out. values, limits: one for each item; items with no value are left out.
  void fill(std::span<const std::int64_t> values, std::span<const std::int64_t> limits,
            std::int64_t capacity);

  /// Greatest value within the capacity, at most that of the last fill.
  std::int64_t best(std::int64_t capacity) const { return best_[static_cast<std::size_t>(capacity)]; }

  /// What gives it: (item, count), items ascending.
  std::vector<std::pair<std::size_t, std::int64_t>> contents(std::int64_t capacity) const;

  /// Cells of the tables filled so far.
  std::int64_t cells() const { return cells_; }

private:
  struct Bundle {
    std::size_t item;
    std::int64_t count;
    std::int64_t weight;
  };

  const Problem& problem_;
  std::vector<Bundle> bundles_;
  std::vector<std::int64_t> best_;
  std::vector<bool> taken_;
  std::int64_t cells_ = 0;
};

} // namespace sheerpole::cutting
