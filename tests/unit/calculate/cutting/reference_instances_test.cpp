// Every instance of tests/reference/cutting to its known optimum, with proof.

#include "calculate/cutting/plan_cutting.hpp"
#include "unit/calculate/cutting/fault_of_plan.hpp"
#include "unit/calculate/cutting/reference_instances.hpp"

#include <gtest/gtest.h>

namespace sheerpole::reference_instances_test {
namespace {

void expect_optimum(const test::ReferenceInstance& instance) {
  SCOPED_TRACE(instance.name);
  const CuttingPlan plan = plan_cutting(instance.order);
  EXPECT_EQ(test::fault_of(instance.order, plan), "");
  EXPECT_TRUE(plan.uncut.empty());
  EXPECT_EQ(plan.totals.stock_mm, instance.optimum_mm);
  EXPECT_EQ(plan.lower_bound_mm, instance.optimum_mm);
  EXPECT_TRUE(plan.proven);
}

TEST(CuttingReference, ManyPiecesFromOneStockLength) {
  const auto instances = test::one_stock_length(SHEERPOLE_REFERENCE_DIR);
  ASSERT_EQ(instances.size(), 40U);
  for (const auto& instance : instances)
    expect_optimum(instance);
}

TEST(CuttingReference, FewPiecesFromSeveralStockLengths) {
  const auto instances = test::several_stock_lengths(SHEERPOLE_REFERENCE_DIR);
  ASSERT_EQ(instances.size(), 8U);
  for (const auto& instance : instances)
    expect_optimum(instance);
}

} // namespace
} // namespace sheerpole::reference_instances_test
