#pragma once

#include <cstddef>
#include <cstdint>
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
  friend auto operator<=>(const Pattern&, const Pattern&) = default;
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

} // namespace sheerpole::cutting
