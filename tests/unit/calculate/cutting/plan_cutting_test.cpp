#include "calculate/cutting/plan_cutting.hpp"
#include "unit/calculate/cutting/fault_of_plan.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole::plan_cutting_test {
namespace {

using testing::ElementsAre;
using testing::SizeIs;

CuttingStock stock_of(std::int64_t length_mm, std::optional<std::int64_t> available = std::nullopt) {
  CuttingStock stock;
  stock.name = "stock of " + std::to_string(length_mm);
  stock.length_mm = length_mm;
  stock.available = available;
  return stock;
}

CuttingOrder order_of(const std::vector<std::int64_t>& lengths_mm, std::vector<CuttingStock> stocks,
                      std::int64_t kerf_mm = 0) {
  CuttingOrder order;
  for (const std::int64_t length : lengths_mm)
    order.pieces.push_back({"piece " + std::to_string(order.pieces.size() + 1), length, 1});
  order.stocks = std::move(stocks);
  order.kerf_mm = kerf_mm;
  return order;
}

/// The plan, after it has been looked through.
CuttingPlan sound_plan(const CuttingOrder& order, const CuttingLimits& limits = {}) {
  CuttingPlan plan = plan_cutting(order, limits);
  EXPECT_EQ(test::fault_of(order, plan), "");
  return plan;
}

std::vector<std::int64_t> lengths(const CutStock& stock) {
  std::vector<std::int64_t> lengths;
  for (const CutPiece& piece : stock.pieces)
    lengths.push_back(piece.length_mm);
  return lengths;
}

TEST(PlanCutting, NothingOrderedIsCutFromNothing) {
  for (const CuttingOrder& order : {CuttingOrder{}, order_of({}, {stock_of(1000)})}) {
    const CuttingPlan plan = sound_plan(order);
    EXPECT_THAT(plan.stocks, SizeIs(0));
    EXPECT_THAT(plan.uncut, SizeIs(0));
    EXPECT_EQ(plan.cost_mm, 0);
    EXPECT_TRUE(plan.proven);
  }
  CuttingOrder none = order_of({500}, {stock_of(1000)});
  none.pieces.front().count = 0;
  EXPECT_THAT(sound_plan(none).stocks, SizeIs(0));
}

TEST(PlanCutting, APieceLongerThanEveryStockIsLeftAndTheOthersAreCut) {
  const CuttingPlan plan = sound_plan(order_of({1001, 400}, {stock_of(1000), stock_of(2000, 0)}));
  ASSERT_THAT(plan.uncut, SizeIs(1));
  EXPECT_EQ(plan.uncut[0].name, "piece 1");
  EXPECT_EQ(plan.uncut[0].reason, UncutReason::longer_than_every_stock);
  ASSERT_THAT(plan.stocks, SizeIs(1));
  EXPECT_THAT(lengths(plan.stocks[0]), ElementsAre(400));
  EXPECT_TRUE(plan.proven);
}

TEST(PlanCutting, WithoutStockNothingIsCut) {
  const CuttingPlan plan = sound_plan(order_of({400, 300}, {}));
  EXPECT_THAT(plan.stocks, SizeIs(0));
  ASSERT_THAT(plan.uncut, SizeIs(2));
  EXPECT_TRUE(plan.proven);
}

TEST(PlanCutting, ScarceStockLeavesTheLeastLengthUncut) {
  // 500 + 400 is the most that goes into 1000.
  const CuttingPlan plan = sound_plan(order_of({500, 400, 350}, {stock_of(1000, 1)}));
  ASSERT_THAT(plan.uncut, SizeIs(1));
  EXPECT_EQ(plan.uncut[0].length_mm, 350);
  EXPECT_EQ(plan.uncut[0].reason, UncutReason::not_enough_stock);
  EXPECT_TRUE(plan.proven);
}

TEST(PlanCutting, APieceThatEndsWithItsStockNeedsNoCut) {
  const CuttingPlan plan = sound_plan(order_of({1000}, {stock_of(1000)}, 3));
  ASSERT_THAT(plan.stocks, SizeIs(1));
  EXPECT_EQ(plan.totals.kerf_mm, 0);
  EXPECT_EQ(plan.stocks[0].leftover_mm, 0);
  EXPECT_FALSE(plan.stocks[0].keeps_offcut);
}

TEST(PlanCutting, EveryOtherPieceNeedsACut) {
  // 300 | 3 | 300 | 3 | and 394 are left.
  const CuttingPlan plan = sound_plan(order_of({300, 300}, {stock_of(1000)}, 3));
  ASSERT_THAT(plan.stocks, SizeIs(1));
  EXPECT_EQ(plan.stocks[0].pieces[1].start_mm, 303);
  EXPECT_EQ(plan.totals.kerf_mm, 6);
  EXPECT_EQ(plan.stocks[0].leftover_mm, 394);
}

TEST(PlanCutting, TheLastCutTakesWhatIsLessThanAKerf) {
  // 497 + 3 + 498 = 998: 2 are left for a cut of 3.
  const CuttingPlan plan = sound_plan(order_of({498, 497}, {stock_of(1000)}, 3));
  ASSERT_THAT(plan.stocks, SizeIs(1));
  EXPECT_EQ(plan.totals.kerf_mm, 5);
  EXPECT_EQ(plan.stocks[0].leftover_mm, 0);
  // One more mm for each piece goes exactly, one more again does not.
  EXPECT_THAT(sound_plan(order_of({499, 498}, {stock_of(1000)}, 3)).stocks, SizeIs(1));
  EXPECT_THAT(sound_plan(order_of({499, 499}, {stock_of(1000)}, 3)).stocks, SizeIs(2));
}

TEST(PlanCutting, ALeftoverIsKeptFromTheLeastOffcutOn) {
  CuttingOrder order = order_of({900}, {stock_of(1000)});
  order.least_offcut_mm = 100;
  EXPECT_EQ(sound_plan(order).totals.offcuts_mm, 100);
  EXPECT_EQ(sound_plan(order).totals.waste_mm, 0);
  order.least_offcut_mm = 101;
  EXPECT_EQ(sound_plan(order).totals.offcuts_mm, 0);
  EXPECT_EQ(sound_plan(order).totals.waste_mm, 100);
}

TEST(PlanCutting, HundredsOfEqualPieces) {
  // 4 * 1234 + 3 * 3 = 4945 goes into 6000, a fifth does not: 700 / 4 = 175.
  CuttingOrder order = order_of({1234}, {stock_of(6000)}, 3);
  order.pieces.front().count = 700;
  const CuttingPlan plan = sound_plan(order);
  EXPECT_THAT(plan.stocks, SizeIs(175));
  EXPECT_TRUE(plan.proven);
  EXPECT_EQ(plan.stocks.back().pieces.back().ordinal, 700);
}

TEST(PlanCutting, FewPiecesFromAVeryLongSpool) {
  const CuttingPlan plan = sound_plan(order_of({12'345, 9'871, 14'003, 12'345}, {stock_of(1'000'000)}, 2));
  ASSERT_THAT(plan.stocks, SizeIs(1));
  EXPECT_THAT(lengths(plan.stocks[0]), ElementsAre(14'003, 12'345, 12'345, 9'871));
  EXPECT_EQ(plan.stocks[0].leftover_mm, 1'000'000 - 48'564 - 8);
  EXPECT_TRUE(plan.proven);
}

TEST(PlanCutting, OfEqualCostsTheFewerStocksAreTaken) {
  const CuttingPlan plan = sound_plan(order_of({400, 400, 400}, {stock_of(400), stock_of(1200)}));
  ASSERT_THAT(plan.stocks, SizeIs(1));
  EXPECT_EQ(plan.stocks[0].length_mm, 1200);
}

TEST(PlanCutting, OfEqualPlansTheLongestLeftoverIsMade) {
  // Two stocks in any case; 600 + 400 in one of them leave 700 of the other.
  const CuttingPlan plan = sound_plan(order_of({600, 400, 300}, {stock_of(1000)}));
  ASSERT_THAT(plan.stocks, SizeIs(2));
  EXPECT_EQ(std::max(plan.stocks[0].leftover_mm, plan.stocks[1].leftover_mm), 700);
}

TEST(PlanCutting, ASpoolThatCountsAsCutCostsWhatIsTakenFromIt) {
  CuttingStock spool = stock_of(200'000);
  spool.counting = StockCounting::as_cut;
  CuttingOrder order = order_of({8'000, 6'000, 5'000}, {spool}, 2);
  EXPECT_EQ(sound_plan(order).cost_mm, 19'006);
  EXPECT_EQ(sound_plan(order).totals.stock_mm, 200'000);

  // An offcut of 11 m at half its length: 6 + 5 m and a cut between go into it and save 11 m of the spool.
  CuttingStock offcut = stock_of(11'002, 1);
  offcut.form = StockForm::offcut;
  offcut.cost_mm = 5'501;
  order.stocks.push_back(offcut);
  const CuttingPlan plan = sound_plan(order);
  EXPECT_EQ(plan.cost_mm, 8'002 + 5'501);
  EXPECT_TRUE(plan.proven);
  // At 12 m it costs more than it saves.
  order.stocks.back().cost_mm = 12'000;
  EXPECT_THAT(sound_plan(order).stocks, SizeIs(1));
}

TEST(PlanCutting, PiecesAndStocksOfOneLengthAreHandedOutByName) {
  CuttingOrder order;
  order.pieces = {{"b", 500, 1}, {"c", 500, 1}, {"a", 500, 2}};
  order.stocks = {stock_of(1000, 1), stock_of(1000, 1)};
  order.stocks[0].name = "coil 2";
  order.stocks[1].name = "coil 1";
  const CuttingPlan plan = sound_plan(order);
  ASSERT_THAT(plan.stocks, SizeIs(2));
  EXPECT_EQ(plan.stocks[0].name, "coil 1");
  EXPECT_EQ(plan.stocks[0].pieces[1].name, "a");
  EXPECT_EQ(plan.stocks[0].pieces[1].ordinal, 2);
  EXPECT_EQ(plan.stocks[1].pieces[0].name, "b");
  EXPECT_EQ(plan.stocks[1].pieces[1].name, "c");
}

TEST(PlanCutting, TheLargestOrderEndsInAPlan) {
  // 100 000 pieces of 100 km: two and a kerf go into no stock.
  CuttingOrder order = order_of({longest_cutting_mm}, {stock_of(longest_cutting_mm)}, 3);
  order.pieces.front().count = most_cutting_pieces;
  const CuttingPlan plan = sound_plan(order);
  EXPECT_EQ(plan.cost_mm, longest_cutting_mm * most_cutting_pieces);
  EXPECT_TRUE(plan.proven);
}

TEST(PlanCutting, StockThatCostsNothingIsTakenAsFewTimesAsPossible) {
  CuttingOrder order = order_of({700, 300, 600, 400}, {stock_of(1000)});
  order.stocks.front().cost_mm = 0;
  const CuttingPlan plan = sound_plan(order);
  EXPECT_EQ(plan.cost_mm, 0);
  EXPECT_THAT(plan.stocks, SizeIs(2));
}

TEST(PlanCutting, LimitsEndInAPlanThatSaysSo) {
  // Two of 3400 or 3401 go into 10 m, so 30 need 15; by length alone 11 would do.
  CuttingOrder order = order_of({3'400, 3'401}, {stock_of(10'000)});
  for (OrderedPiece& piece : order.pieces)
    piece.count = 15;
  EXPECT_TRUE(sound_plan(order).proven);
  CuttingLimits few_pieces;
  few_pieces.most_pieces = 29;
  CuttingLimits few_cells;
  few_cells.most_knapsack_cells = 10;
  for (const CuttingLimits& limits : {few_pieces, few_cells}) {
    const CuttingPlan plan = sound_plan(order, limits);
    EXPECT_THAT(plan.stocks, SizeIs(15));
    EXPECT_EQ(plan.lower_bound_mm, 110'000);
    EXPECT_FALSE(plan.proven);
    EXPECT_EQ(plan.search, CuttingSearch::too_large);
  }
}

TEST(PlanCutting, ALimitOfStepsEndsInAPlanThatSaysSo) {
  CuttingOrder order = order_of({}, {stock_of(9'999)}, 3);
  for (std::int64_t i = 0; i < 40; ++i)
    order.pieces.push_back({"piece", 3'901 - 97 * (i % 20), 1});
  CuttingLimits few;
  few.steps = 1;
  const CuttingPlan hasty = sound_plan(order, few);
  const CuttingPlan patient = sound_plan(order);
  EXPECT_THAT(hasty.uncut, SizeIs(0));
  EXPECT_TRUE(patient.proven);
  EXPECT_FALSE(hasty.proven);
  EXPECT_EQ(hasty.search, CuttingSearch::limit_reached);
  EXPECT_LE(hasty.lower_bound_mm, patient.lower_bound_mm);
  EXPECT_GE(hasty.cost_mm, patient.cost_mm);
}

} // namespace
} // namespace sheerpole::plan_cutting_test
