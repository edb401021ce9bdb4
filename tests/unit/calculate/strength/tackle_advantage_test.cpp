#include "calculate/strength/tackle_advantage.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sheerpole::tackle_advantage_test {
namespace {

TEST(TackleAdvantage, WithoutFrictionIsTheNumberOfParts) {
  EXPECT_EQ(*tackle_advantage(4, HaulingPart::from_fixed_block, 1), 4);
  EXPECT_EQ(*tackle_advantage(4, HaulingPart::from_moving_block, 1), 4);
}

// By hand, sheaves of 90 %: 1 + 0.9 + 0.81 + 0.729 = 3.439, and 0.9 of it from the fixed block.
TEST(TackleAdvantage, WithFriction) {
  EXPECT_NEAR(*tackle_advantage(4, HaulingPart::from_moving_block, 0.9), 3.439, 1e-12);
  EXPECT_NEAR(*tackle_advantage(4, HaulingPart::from_fixed_block, 0.9), 3.0951, 1e-12);
}

TEST(TackleAdvantage, IsNothingOutOfRange) {
  EXPECT_FALSE(tackle_advantage(0, HaulingPart::from_fixed_block, 0.9));
  EXPECT_FALSE(tackle_advantage(101, HaulingPart::from_fixed_block, 0.9));
  EXPECT_FALSE(tackle_advantage(4, HaulingPart::from_fixed_block, 0));
  EXPECT_FALSE(tackle_advantage(4, HaulingPart::from_fixed_block, 1.1));
  EXPECT_FALSE(tackle_advantage(4, HaulingPart::from_fixed_block, std::nan("")));
}

} // namespace
} // namespace sheerpole::tackle_advantage_test
