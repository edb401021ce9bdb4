#include "calculate/cutting/plan_cutting.hpp"

#include "base/internal_error.hpp"
#include "calculate/cutting/search.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace sheerpole {
namespace {

using namespace cutting;

void expect_valid(const CuttingOrder& order) {
  const auto length = [](std::int64_t mm, std::int64_t least) {
    return mm >= least && mm <= longest_cutting_mm;
  };
  bool valid = length(order.kerf_mm, 0) && length(order.least_offcut_mm, 0);
  std::int64_t pieces = 0;
  for (const OrderedPiece& piece : order.pieces) {
    valid = valid && length(piece.length_mm, 1) && piece.count >= 0 && piece.count <= most_cutting_pieces;
    pieces += valid ? piece.count : 0;
  }
  for (const CuttingStock& stock : order.stocks)
    valid = valid && length(stock.length_mm, 1) && length(cost_of_beginning(stock), 0) &&
            stock.available.value_or(0) >= 0;
  if (!valid || pieces > most_cutting_pieces)
    internal_error("an order to be cut with a length, a count or a cost out of range");
}

/// Leaves as little length uncut as the stock allows.
SearchResult least_uncut(const CuttingOrder& order, const OrderProblem& source,
                         const CuttingLimits& limits) {
  Problem problem = source.problem;
  for (Kind& kind : problem.kinds) {
    kind.cost = 0;
    kind.as_cut = false;
  }
  for (Item& item : problem.items)
    item.skip_cost = item.weight * problem.unit_mm - order.kerf_mm;
  problem.rank = 1;
  problem.counts_stocks = false;
  return search(problem, limits);
}

bool skips(const Packing& packing) {
  return std::any_of(packing.skipped.begin(), packing.skipped.end(), [](std::int64_t n) { return n > 0; });
}

/// A packing in which nothing is skipped, as far as the greedy one goes.
Packing first_packing(const Problem& problem) {
  Problem unskipped = problem;
  for (Item& item : unskipped.items)
    item.skip_cost = longest_cutting_mm;
  std::vector<std::int64_t> demand;
  std::vector<std::int64_t> available;
  for (const Item& item : problem.items)
    demand.push_back(item.demand);
  for (const Kind& kind : problem.kinds)
    available.push_back(kind.available);
  return greedy(unskipped, demand, available);
}

} // namespace

CuttingPlan plan_cutting(const CuttingOrder& order, const CuttingLimits& limits) {
  expect_valid(order);
  OrderProblem source = problem_of(order);
  Problem& problem = source.problem;
  Packing start = first_packing(problem);
  bool uncut_proven = true;
  bool too_large = false;
  std::vector<std::int64_t> uncut(problem.items.size(), 0);
  if (skips(start)) {
    SearchResult least = least_uncut(order, source, limits);
    uncut_proven = least.cost_proven;
    too_large = least.too_large;
    start = std::move(least.packing);
    std::swap(uncut, start.skipped);
    for (std::size_t i = 0; i < uncut.size(); ++i)
      problem.items[i].demand -= uncut[i];
    tidy(problem, start);
  }
  // Whoever skips pays more than the packing that is known, so the cheapest skips nothing.
  const std::int64_t forbidding = cost_of(problem, start) + 1;
  for (Item& item : problem.items)
    item.skip_cost = forbidding;
  // In an order so large that ranked costs would not go into 64 bits ties stay as they fall.
  const double pieces = static_cast<double>(problem.rank);
  if (static_cast<double>(forbidding) * pieces * pieces > std::ldexp(1.0, 60)) {
    problem.rank = 1;
    problem.counts_stocks = false;
  }

  SearchResult found = search(problem, limits, start);
  Packing packing = with_longest_leftover(problem, found, limits.nodes / 20);
  packing.skipped = std::move(uncut);
  for (std::size_t i = 0; i < packing.skipped.size(); ++i)
    problem.items[i].demand += packing.skipped[i];
  CuttingPlan plan = assemble(order, source, packing);
  plan.lower_bound_mm = found.lower_cost;
  plan.proven = found.cost_proven && uncut_proven;
  too_large = too_large || found.too_large;
  plan.search = plan.proven ? CuttingSearch::finished
                            : (too_large ? CuttingSearch::too_large : CuttingSearch::limit_reached);
  return plan;
}

} // namespace sheerpole
