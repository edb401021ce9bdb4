#include "calculate/physics/lashing_share.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace sheerpole::lashing_share_test {
namespace {

struct Worked {
  double friction, three, four, six;
};
// Worked by hand from the capstan law, legs summed one by one, half a turn round each eye.
constexpr Worked worked[] = {
    {0.05, 0.70, 0.615, 0.486},
    {0.08, 0.584, 0.487, 0.357},
    {0.10, 0.524, 0.426, 0.302},
    {0.15, 0.417, 0.325, 0.221},
};

TEST(LashingShare, GivesTheWorkedValues) {
  for (const auto& [friction, three, four, six] : worked) {
    EXPECT_NEAR(*lashing_share(friction, 3), three, 0.0005);
    EXPECT_NEAR(*lashing_share(friction, 4), four, 0.0005);
    EXPECT_NEAR(*lashing_share(friction, 6), six, 0.0005);
  }
}

TEST(LashingShare, WithoutFrictionAllLegsPullAlike) {
  EXPECT_EQ(*lashing_share(0, 4), 1);
  EXPECT_EQ(*lashing_share(0.1, 4, 0), 1);
}

TEST(LashingShare, IsNothingOutOfRange) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(lashing_share(-0.1, 4));
  EXPECT_FALSE(lashing_share(nan, 4));
  EXPECT_FALSE(lashing_share(0.1, 0));
  EXPECT_FALSE(lashing_share(0.1, 1001));
  EXPECT_FALSE(lashing_share(0.1, 4, -1));
  EXPECT_FALSE(lashing_share(0.1, 4, nan));
  EXPECT_FALSE(lashing_share(std::numeric_limits<double>::infinity(), 4));
}

RC_GTEST_PROP(LashingShare, IsTheMeanOfTheLegs, ()) {
  const double friction = *rc::gen::inRange(1, 100'000) / 100'000.0;
  const int turns = *rc::gen::inRange(1, 30);
  const double angle = *rc::gen::inRange(1, 700) / 100.0;
  double sum = 0;
  for (int leg = 0; leg < 2 * turns; ++leg)
    sum += std::exp(-friction * angle * leg);
  RC_ASSERT(std::abs(*lashing_share(friction, turns, angle) / (sum / (2 * turns)) - 1) < 1e-12);
}

} // namespace
} // namespace sheerpole::lashing_share_test
