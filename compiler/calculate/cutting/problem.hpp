#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <utility>
#include <vector>

/// The search behind plan_cutting, on bare numbers. A piece with its kerf has a weight; a stock that is one
/// kerf longer than it is holds weights up to its capacity, so kerf needs no further thought here.
namespace sheerpole::cutting {

/// Pieces of one length.
struct Item {
  std::int64_t weight = 0; ///< length and kerf, in units of Problem::unit_mm
  std::int64_t demand = 0;
  std::int64_t skip_cost = 0; ///< of leaving one of them uncut
};

/// Stocks of one length and one cost.
struct Kind {
  std::int64_t capacity =
      0; ///< length and kerf, in units of Problem::unit_mm, rounded down; no more than all pieces together
  std::int64_t available = 0;
  std::int64_t cost = 0;      ///< of each that is begun
  std::int64_t length_mm = 0; ///< length and kerf
  bool as_cut = false;        ///< the weight that is cut from it costs as well
};

/// A cost and what settles it when equal, in one number: cost * Problem::rank + stocks begun.
using RankedCost = std::int64_t;

struct Problem {
  std::vector<Item> items;   ///< heaviest first, no weight twice
  std::vector<Kind> kinds;   ///< largest capacity first
  std::int64_t unit_mm = 1;  ///< greatest common divisor of all weights
  std::int64_t rank = 1;     ///< above the number of stocks that any plan begins
  bool counts_stocks = true; ///< whether the fewer stocks of two plans of equal cost are better
};

/// How one stock is cut.
struct Pattern {
  std::size_t kind = 0;
  std::vector<std::pair<std::size_t, std::int64_t>>
      counts; ///< (item, how many), items ascending, none with 0
  friend bool operator==(const Pattern&, const Pattern&) = default;
  // Not by <=>, which vectors do not have in every library.
  friend bool operator<(const Pattern& a, const Pattern& b) {
    return a.kind != b.kind ? a.kind < b.kind : a.counts < b.counts;
  }
};

/// A way to serve the whole demand.
struct Packing {
  std::vector<Pattern> stocks;       ///< one for each stock begun
  std::vector<std::int64_t> skipped; ///< for each item how many are left uncut
};

std::int64_t weight_of(const Problem& problem, const Pattern& pattern);
/// mm
std::int64_t cost_of(const Problem& problem, const Pattern& pattern);
/// mm
std::int64_t cost_of(const Problem& problem, const Packing& packing);
RankedCost ranked_cost(const Problem& problem, const Pattern& pattern);
RankedCost ranked_cost(const Problem& problem, const Packing& packing);

/// Takes out what is cut beyond the demand, from the stocks with the most left over, drops empty stocks,
/// and moves each content to the cheapest kind that is free and holds it. Never makes the packing dearer.
void tidy(const Problem& problem, Packing& packing);

/// Which totals the costs of stocks can add up to at all: two coils of 30 m and 50 m make no 70 m. So a
/// bound that falls between two such totals may be raised to the upper one.
class ReachableCost {
public:
  /// upper: the cost of a known packing; totals above it do not matter.
  ReachableCost(const Problem& problem, RankedCost upper);

  /// The least ranked cost of a packing that is not below `bound`; never above `upper`.
  RankedCost at_least(RankedCost bound) const;

private:
  std::int64_t rank_;
  RankedCost upper_;
  std::int64_t step_ = 1; ///< mm; divides every total
  std::vector<std::int32_t>
      fewest_stocks_; ///< for the total i * step_, or `never`; empty when there are too many
};

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
