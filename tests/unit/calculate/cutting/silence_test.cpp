// The solvers print by themselves unless they are told not to; a plan must be the same each time.

#include "calculate/cutting/plan_cutting.hpp"
#include "unit/calculate/cutting/reference_instances.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::silence_test {
namespace {

std::string words(const CuttingPlan& plan) {
  std::string words;
  for (const CutStock& stock : plan.stocks) {
    words += stock.name + ":";
    for (const CutPiece& piece : stock.pieces)
      words += " " + piece.name + "@" + std::to_string(piece.start_mm);
    words += "\n";
  }
  return words;
}

TEST(CuttingSolvers, AreSilentAndGiveTheSamePlanEachTime) {
  // t60_01 needs branching, ms06 the choice among equals.
  for (const auto& instance : {test::one_stock_length(SHEERPOLE_REFERENCE_DIR).at(21),
                               test::several_stock_lengths(SHEERPOLE_REFERENCE_DIR).at(6)}) {
    testing::internal::CaptureStdout();
    testing::internal::CaptureStderr();
    const std::string first = words(plan_cutting(instance.order));
    const std::string second = words(plan_cutting(instance.order));
    EXPECT_EQ(testing::internal::GetCapturedStdout(), "");
    EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
    EXPECT_FALSE(first.empty());
    EXPECT_EQ(first, second) << instance.name;
  }
}

} // namespace
} // namespace sheerpole::silence_test
