#pragma once

#include "calculate/cutting/plan_cutting.hpp"
#include "calculate/cutting/problem.hpp"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace sheerpole::cutting {

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
