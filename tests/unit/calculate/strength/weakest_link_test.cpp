#include "calculate/strength/weakest_link.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <optional>
#include <vector>

namespace sheerpole::weakest_link_test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

using Loads = std::vector<std::optional<Force>>;

Force kn(double value) {
  return Force::kilonewtons(value);
}

// By hand: 60 kN, nine tenths left in the splice and eight tenths over the bend, 43.2 kN.
TEST(WeakestLink, ReducedBreakLoad) {
  EXPECT_NEAR(reduced_break_load(kn(60), std::array{0.9, 0.8})->kilonewtons(), 43.2, 1e-9);
  EXPECT_EQ(*reduced_break_load(kn(60), {}), kn(60));
}

TEST(WeakestLink, IsTheLowest) {
  const auto chain = weakest_link(Loads{kn(50), kn(36), kn(45), kn(36)});
  ASSERT_TRUE(chain);
  EXPECT_EQ(chain->weakest_known, 1U);
  EXPECT_EQ(chain->strength, kn(36));
  EXPECT_EQ(chain->at_most, kn(36));
  EXPECT_THAT(chain->unknown, IsEmpty());
}

TEST(WeakestLink, AnUnknownPartLeavesTheStrengthUnknown) {
  const auto chain = weakest_link(Loads{kn(50), std::nullopt, kn(45), std::nullopt});
  ASSERT_TRUE(chain);
  EXPECT_EQ(chain->strength, std::nullopt);
  EXPECT_EQ(chain->at_most, kn(45));
  EXPECT_EQ(chain->weakest_known, 2U);
  EXPECT_THAT(chain->unknown, ElementsAre(1, 3));
}

TEST(WeakestLink, OfUnknownPartsOnly) {
  const auto chain = weakest_link(Loads{std::nullopt});
  ASSERT_TRUE(chain);
  EXPECT_EQ(chain->strength, std::nullopt);
  EXPECT_EQ(chain->at_most, std::nullopt);
  EXPECT_EQ(chain->weakest_known, std::nullopt);
}

TEST(WeakestLink, IsNothingOutOfRange) {
  EXPECT_FALSE(weakest_link({}));
  EXPECT_FALSE(weakest_link(Loads{kn(1), kn(-1)}));
  EXPECT_FALSE(reduced_break_load(Force(), {}));
  EXPECT_FALSE(reduced_break_load(kn(1), std::array{0.0}));
  EXPECT_FALSE(reduced_break_load(kn(1), std::array{1.1}));
  EXPECT_FALSE(reduced_break_load(kn(1), std::array{std::nan("")}));
}

} // namespace
} // namespace sheerpole::weakest_link_test
