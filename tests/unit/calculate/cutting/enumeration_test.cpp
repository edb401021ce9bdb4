// Small orders against every way to deal the pieces out.

#include "calculate/cutting/plan_cutting.hpp"
#include "unit/calculate/cutting/enumerated_plan.hpp"
#include "unit/calculate/cutting/fault_of_plan.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <numeric>

namespace sheerpole::enumeration_test {
namespace {

using test::EnumeratedPlan;
using test::fault_of;

constexpr int orders_each = 5; ///< in each case of a property

/// The whole range from the first case on: small numbers are no simpler here.
std::int64_t any_of(std::int64_t least, std::int64_t below) {
  return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange<std::int64_t>(least, below));
}

CuttingOrder any_order(bool plenty, bool may_count_as_cut) {
  CuttingOrder order;
  order.kerf_mm = *rc::gen::element<std::int64_t>(0, 0, 2, 3, 7);
  order.least_offcut_mm = *rc::gen::element<std::int64_t>(0, 10, 25);
  // A coarse grid makes equal sums, and so ties, frequent.
  const std::int64_t grid = *rc::gen::element<std::int64_t>(1, 5, 10);
  const std::int64_t kinds = any_of(1, 4);
  for (std::int64_t k = 0; k < kinds; ++k) {
    CuttingStock stock;
    stock.name = "stock " + std::to_string(k);
    stock.length_mm = grid * any_of(40 / grid, 160 / grid);
    if (!plenty || k > 0)
      stock.available = any_of(0, 4);
    if (may_count_as_cut && any_of(0, 2) == 0)
      stock.counting = StockCounting::as_cut;
    if (may_count_as_cut && any_of(0, 2) == 0)
      stock.cost_mm = grid * any_of(0, 160 / grid);
    order.stocks.push_back(stock);
  }
  const std::int64_t pieces = any_of(1, 9);
  for (std::int64_t p = 0; p < pieces; ++p)
    order.pieces.push_back({"piece " + std::to_string(p), grid * any_of(10 / grid, 90 / grid), 1});
  if (any_of(0, 3) == 0 && order.pieces.size() < 8)
    order.pieces.front().count = 2;
  return order;
}

std::int64_t uncut_mm(const CuttingPlan& plan) {
  std::int64_t sum = 0;
  for (const UncutPiece& piece : plan.uncut)
    sum += piece.length_mm * piece.count;
  return sum;
}

std::int64_t longest_leftover_mm(const CuttingPlan& plan) {
  std::int64_t longest = 0;
  for (const CutStock& stock : plan.stocks)
    longest = std::max(longest, stock.leftover_mm);
  return longest;
}

void agrees_with_enumeration(const CuttingOrder& order) {
  const CuttingPlan plan = plan_cutting(order);
  RC_ASSERT(fault_of(order, plan) == "");
  const test::PlanValue best = EnumeratedPlan(order).best();
  RC_ASSERT(plan.proven);
  RC_ASSERT(uncut_mm(plan) == best.uncut_mm);
  // Of several sets of pieces that may stay uncut the search takes one; its cost is the least for that set.
  const bool too_long_only =
      std::none_of(plan.uncut.begin(), plan.uncut.end(),
                   [](const UncutPiece& piece) { return piece.reason == UncutReason::not_enough_stock; });
  if (!too_long_only) {
    RC_ASSERT(plan.cost_mm >= best.cost_mm);
    return;
  }
  RC_ASSERT(plan.cost_mm == best.cost_mm);
  RC_ASSERT(static_cast<std::int64_t>(plan.stocks.size()) == best.stocks);
  RC_ASSERT(longest_leftover_mm(plan) == -best.minus_leftover_mm);
}

RC_GTEST_PROP(CuttingEnumeration, PlansFromPlentyAreTheBest, ()) {
  for (int i = 0; i < orders_each; ++i)
    agrees_with_enumeration(any_order(true, false));
}

RC_GTEST_PROP(CuttingEnumeration, PlansFromScarceStockAreTheBest, ()) {
  for (int i = 0; i < orders_each; ++i)
    agrees_with_enumeration(any_order(false, false));
}

RC_GTEST_PROP(CuttingEnumeration, PlansOfAnyCostAreTheBest, ()) {
  for (int i = 0; i < orders_each; ++i)
    agrees_with_enumeration(any_order(true, true));
}

RC_GTEST_PROP(CuttingEnumeration, TheOrderOfTheListsDoesNotMatter, ()) {
  const CuttingOrder order = any_order(*rc::gen::arbitrary<bool>(), true);
  CuttingOrder other = order;
  std::reverse(other.pieces.begin(), other.pieces.end());
  std::reverse(other.stocks.begin(), other.stocks.end());
  const CuttingPlan a = plan_cutting(order);
  const CuttingPlan b = plan_cutting(other);
  RC_ASSERT(a.stocks.size() == b.stocks.size());
  for (std::size_t s = 0; s < a.stocks.size(); ++s) {
    RC_ASSERT(a.stocks[s].name == b.stocks[s].name);
    RC_ASSERT(a.stocks[s].ordinal == b.stocks[s].ordinal);
    RC_ASSERT(a.stocks[s].pieces.size() == b.stocks[s].pieces.size());
    for (std::size_t p = 0; p < a.stocks[s].pieces.size(); ++p) {
      RC_ASSERT(a.stocks[s].pieces[p].name == b.stocks[s].pieces[p].name);
      RC_ASSERT(a.stocks[s].pieces[p].start_mm == b.stocks[s].pieces[p].start_mm);
    }
  }
}

} // namespace
} // namespace sheerpole::enumeration_test
