#include "calculate/strength/rope_strength.hpp"

#include "calculate/physics/rope_work.hpp"
#include "units/si_factors.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <numbers>
#include <optional>
#include <rapidcheck/gtest.h>
#include <vector>

namespace sheerpole::rope_strength_test {
namespace weakest_link_tests {
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
} // namespace weakest_link_tests

namespace eye_angle_tests {
namespace {

Length mm(double value) {
  return Length::millimetres(value);
}

// By hand: pin 10 mm, throat 30 mm from its centre, 2 asin(5 / 30).
TEST(EyeAngle, FromThePinsCentre) {
  EXPECT_NEAR(*eye_angle(mm(10), mm(30)) / degree, 19.19, 0.005);
}

// By hand: 2 asin(0.5 / (k - 0.5)) of eyes three, four and five pins long.
TEST(EyeAngle, OfTheInsideLength) {
  EXPECT_NEAR(*eye_angle_of_inside_length(mm(10), mm(30)) / degree, 23.1, 0.05);
  EXPECT_NEAR(*eye_angle_of_inside_length(mm(10), mm(40)) / degree, 16.4, 0.05);
  EXPECT_NEAR(*eye_angle_of_inside_length(mm(10), mm(50)) / degree, 12.8, 0.05);
}

TEST(EyeAngle, IsThatOfALoopWithoutThickness) {
  EXPECT_NEAR(*eye_angle(mm(16), mm(40)), 2 * eye_loop(mm(16), mm(0), mm(40))->half_angle_radians, 1e-12);
}

TEST(EyeAngle, IsNothingWhenTheThroatLiesInThePin) {
  EXPECT_FALSE(eye_angle(mm(10), mm(5)));
  EXPECT_FALSE(eye_angle(mm(0), mm(5)));
  EXPECT_FALSE(eye_angle_of_inside_length(mm(10), mm(10)));
}

} // namespace
} // namespace eye_angle_tests

namespace lashing_strength_tests {
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
} // namespace lashing_strength_tests

namespace tackle_advantage_tests {
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
} // namespace tackle_advantage_tests

} // namespace sheerpole::rope_strength_test
