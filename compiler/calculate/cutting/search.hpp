#pragma once

#include "calculate/cutting/pattern_program.hpp"
#include "calculate/cutting/plan_cutting.hpp"
#include "calculate/cutting/problem.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace sheerpole::cutting {

struct SearchResult {
  Packing packing;
  std::int64_t lower_cost = 0; ///< mm; no packing costs less
  bool cost_proven = false;
  bool too_large = false; ///< the search was not begun
  /// Patterns of which equally good packings can be made; every one that can stand in such a packing when
  /// `all_patterns`.
  std::vector<Pattern> patterns;
  bool all_patterns = false;
};

/// The cheapest packing, fewest stocks among equals; proven where the limits allow. start: a packing that
/// is known.
SearchResult search(const Problem& problem, const CuttingLimits& limits,
                    const std::optional<Packing>& start = std::nullopt);

/// Among packings of the same cost and number of stocks one whose longest single leftover is long: by
/// cutting pairs of stocks anew, then, where there are few patterns, by an integer program, which is exact
/// when the search lists every pattern.
Packing with_longest_leftover(const Problem& problem, const SearchResult& found, int nodes);

/// The cheapest of a few packings of the pieces `demand` into the stocks `available`, each made by best fit
/// with the heaviest first; they differ in which kind of stock is begun when a piece fits nowhere. What
/// fits nowhere at all is skipped.
Packing greedy(const Problem& problem, std::span<const std::int64_t> demand,
               std::span<const std::int64_t> available);

/// Looks for a packing cheaper than `best` by taking the most used pattern of the linear program as a whole
/// stock, solving for what is left, and so on; what is left is also packed greedily each time. `detour`: 0
/// for the plain way; d > 0 takes the second choice at one of the first takes instead. Stops when the bound
/// of what is left shows that nothing better comes, or `enough` is reached. The program is left set to some
/// rest.
void dive(const Problem& problem, PatternProgram& program, int detour, RankedCost enough, Packing& best,
          std::int64_t& steps);

/// The numbers of an order and what they stand for.
struct OrderProblem {
  Problem problem;
  /// For each item the pieces of its length, by name: places in CuttingOrder::pieces.
  std::vector<std::vector<std::size_t>> pieces;
  /// For each kind its stocks, by name: places in CuttingOrder::stocks.
  std::vector<std::vector<std::size_t>> stocks;
  /// Pieces that are longer than every stock: places in CuttingOrder::pieces, in that order.
  std::vector<std::size_t> too_long;
};

/// mm; what beginning this stock costs.
std::int64_t cost_of_beginning(const CuttingStock& stock);

/// Equal lengths become one item, equal stocks one kind; the order of the lists leaves no trace but in the
/// places. Items can not be skipped: the caller sets Item::skip_cost.
OrderProblem problem_of(const CuttingOrder& order);

/// The packing in the words of the order: stocks, positions, kerf, leftovers, what is uncut, and the sums.
/// Stocks: longest first, then those with the longer pieces; pieces of one length by name.
CuttingPlan assemble(const CuttingOrder& order, const OrderProblem& source, const Packing& packing);

} // namespace sheerpole::cutting
