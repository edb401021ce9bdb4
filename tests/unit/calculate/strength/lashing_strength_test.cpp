#include "calculate/strength/lashing_strength.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerpole::lashing_strength_test {
namespace {

LashingMake make(double kilonewtons, int turns, double bend, double knot) {
  return {Force::kilonewtons(kilonewtons), turns, bend, knot};
}

// By hand, all legs alike: 6 legs of 15 kN with half left in the knot 45 kN, 12 legs of six turns 90 kN.
TEST(LashingStrength, OfLegsThatPullAlike) {
  EXPECT_NEAR(lashing_strength_by_legs(Force::kilonewtons(15), 6, 0.5)->kilonewtons(), 45, 1e-12);
  EXPECT_NEAR(lashing_strength_by_legs(Force::kilonewtons(15), 12, 0.5)->kilonewtons(), 90, 1e-12);
  const auto alike = lashing_strength(make(15, 6, 1, 0.5), 0);
  ASSERT_TRUE(alike);
  EXPECT_NEAR(alike->strength.kilonewtons(), 90, 1e-9);
  EXPECT_TRUE(alike->at_the_knot);
}

// By hand, six turns of 15 kN at friction 0.10: r = exp(-0.1 pi) = 0.73040; the twelve legs sum to 3.6240
// of the first, 54.36 kN, and the knot sees r^11 = 0.03157 of it and does not govern.
TEST(LashingStrength, HauledFromOneEnd) {
  const auto lashing = lashing_strength(make(15, 6, 1, 0.5), 0.10);
  ASSERT_TRUE(lashing);
  EXPECT_NEAR(lashing->share, 0.302, 0.0005);
  EXPECT_NEAR(lashing->strength.kilonewtons(), 54.36, 0.02);
  EXPECT_FALSE(lashing->at_the_knot);
}

// By hand: one turn at friction 0.05: r = exp(-0.05 pi) = 0.85464. The knot with half left goes when the
// first leg has 0.5 / 0.85464 = 0.58504 of the cord: 10 x 0.58504 x (1 + 0.85464) = 10.850 kN.
TEST(LashingStrength, OfFewTurnsGoesAtTheKnot) {
  const auto lashing = lashing_strength(make(10, 1, 1, 0.5), 0.05);
  ASSERT_TRUE(lashing);
  EXPECT_TRUE(lashing->at_the_knot);
  EXPECT_NEAR(lashing->strength.kilonewtons(), 10.850, 0.0005);
}

TEST(LashingStrength, IsNothingOutOfRange) {
  EXPECT_FALSE(lashing_strength(make(0, 6, 1, 1), 0.1));
  EXPECT_FALSE(lashing_strength(make(15, 0, 1, 1), 0.1));
  EXPECT_FALSE(lashing_strength(make(15, 6, 0, 1), 0.1));
  EXPECT_FALSE(lashing_strength(make(15, 6, 1, 1.1), 0.1));
  EXPECT_FALSE(lashing_strength(make(15, 6, 1, 1), -0.1));
  EXPECT_FALSE(lashing_strength(make(15, 6, 1, 1), 0.1, std::nan("")));
  EXPECT_FALSE(lashing_strength_by_legs(Force(), 6, 0.5));
  EXPECT_FALSE(lashing_strength_by_legs(Force::newtons(1), 0, 0.5));
  EXPECT_FALSE(lashing_strength_by_legs(Force::newtons(1), 6, std::nan("")));
}

// Statics, legs summed one by one: at the given strength no leg is over its limit, and one is at it.
RC_GTEST_PROP(LashingStrength, OnePlaceIsAtItsLimit, ()) {
  const double friction = *rc::gen::inRange(0, 300) / 1000.0;
  const int turns = *rc::gen::inRange(1, 30);
  const double bend = *rc::gen::inRange(1, 101) / 100.0;
  const double knot = *rc::gen::inRange(1, 101) / 100.0;
  const auto lashing = lashing_strength(make(1, turns, bend, knot), friction);
  RC_ASSERT(lashing.has_value());
  const double r = std::exp(-friction * std::numbers::pi);
  double sum = 0;
  double leg = 1;
  double last = 1;
  for (int i = 0; i < 2 * turns; ++i, leg *= r) {
    sum += leg;
    last = leg;
  }
  const double first = lashing->strength.kilonewtons() / sum;
  const double use = std::max(first / bend, first * last / knot);
  RC_ASSERT(std::abs(use - 1) < 1e-9);
}

} // namespace
} // namespace sheerpole::lashing_strength_test
