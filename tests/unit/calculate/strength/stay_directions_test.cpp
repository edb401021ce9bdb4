#include "calculate/strength/stay_directions.hpp"

#include "units/si_factors.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <rapidcheck/gtest.h>

namespace sheerpole::stay_directions_test {
namespace stay_angle_tests {
namespace {

SpacePoint at(double x, double y, double z) {
  return {Length::metres(x), Length::metres(y), Length::metres(z)};
}

// By hand: 3 m aside and 4 m down from a mast that stands up is atan(3/4), whichever way aside; a mast that
// leans aft by atan(1/4) is that much nearer to a stay that runs as far aft.
TEST(StayAngle, InSpace) {
  const SpacePoint top = at(0, 0, 4);
  const SpacePoint foot = at(0, 0, 0);
  EXPECT_NEAR(*stay_angle(top, at(0, 3, 0), top, foot) / degree, 36.8699, 5e-5);
  EXPECT_NEAR(*stay_angle(top, at(3 / std::sqrt(2), 3 / std::sqrt(2), 0), top, foot) / degree, 36.8699,
              5e-5);
  EXPECT_NEAR(*stay_angle(top, at(-3, 0, 0), top, at(-1, 0, 0)), std::atan(0.75) - std::atan(0.25), 1e-12);
  EXPECT_NEAR(*stay_angle(top, at(0, 0, 0), top, at(0, 0, -1)), 0, 1e-12);
}

// 1 / sin and 1 / tan of a table of functions.
TEST(StayAngle, LoadFactors) {
  struct Row {
    double degrees, tension, compression;
  };
  for (const auto& [degrees, tension, compression] :
       {Row{8, 7.19, 7.12}, Row{10, 5.76, 5.67}, Row{12, 4.81, 4.70}, Row{14, 4.13, 4.01}}) {
    EXPECT_NEAR(*tension_over_side_force(degrees * degree), tension, 0.006);
    EXPECT_NEAR(*compression_over_side_force(degrees * degree), compression, 0.006);
  }
}

// By hand: 10 kN / sin 12 degrees.
TEST(StayAngle, TensionHoldingASideForce) {
  EXPECT_NEAR(tension_holding_side_force(Force::kilonewtons(10), 12 * degree)->kilonewtons(), 48.10, 0.005);
}

// By hand: the parts square to the mast are equal; 10 kN at 20 degrees against 30 degrees: 6.8404 kN.
TEST(StayAngle, BalancingTension) {
  EXPECT_NEAR(balancing_tension(Force::kilonewtons(10), 20 * degree, 30 * degree)->kilonewtons(), 6.8404,
              0.00005);
}

// By hand: sin 2 degrees = 3.5 %, sin 5 degrees = 8.7 %.
TEST(StayAngle, ChainplateSideForce) {
  EXPECT_NEAR(chainplate_side_force(Force::newtons(1000), 2 * degree)->newtons(), 35, 0.5);
  EXPECT_NEAR(chainplate_side_force(Force::newtons(1000), 5 * degree)->newtons(), 87, 0.5);
}

TEST(StayAngle, IsNothingOutOfRange) {
  const double nan = std::nan("");
  const Force newton = Force::newtons(1);
  EXPECT_FALSE(stay_angle(at(0, 0, 1), at(0, 0, 1), at(0, 0, 1), at(0, 0, 0)));
  EXPECT_FALSE(stay_angle(at(0, 0, 1), at(0, 1, 1), at(0, 0, 0), at(0, 0, 0)));
  EXPECT_FALSE(tension_over_side_force(0));
  EXPECT_FALSE(tension_over_side_force(std::numbers::pi));
  EXPECT_FALSE(tension_over_side_force(nan));
  EXPECT_FALSE(compression_over_side_force(0));
  EXPECT_FALSE(compression_over_side_force(1.6));
  EXPECT_FALSE(tension_holding_side_force(Force::newtons(-1), 0.1));
  EXPECT_FALSE(tension_holding_side_force(newton, 1e-320));
  EXPECT_FALSE(balancing_tension(newton, 0, 0.1));
  EXPECT_FALSE(balancing_tension(newton, 0.1, 0));
  EXPECT_FALSE(balancing_tension(Force::newtons(-1), 0.1, 0.1));
  EXPECT_FALSE(chainplate_side_force(newton, -0.1));
  EXPECT_FALSE(chainplate_side_force(newton, 1.6));
}

} // namespace
} // namespace stay_angle_tests

namespace spreader_tip_tests {
namespace {

SpacePoint at(double x, double y, double z) {
  return {Length::metres(x), Length::metres(y), Length::metres(z)};
}

// By hand: 2 x 20 kN x sin 4 degrees.
TEST(SpreaderTip, ThrustOfABend) {
  EXPECT_NEAR(bend_thrust(Force::kilonewtons(20), 8 * degree)->kilonewtons(), 2.790, 0.0005);
  EXPECT_EQ(*bend_thrust(Force::kilonewtons(20), 0), Force());
  EXPECT_NEAR(bend_thrust(Force::newtons(10), std::numbers::pi)->newtons(), 20, 1e-12);
}

// By hand: half of what leans above and below.
TEST(SpreaderTip, BisectingElevation) {
  EXPECT_NEAR(*bisecting_elevation(9.620 * degree, 2.603 * degree) / degree, 6.1115, 1e-9);
  EXPECT_NEAR(*bisecting_elevation(10 * degree, -10 * degree), 0, 1e-12);
}

// By hand: 2 x 20 kN x sin 4 degrees x sin 10 degrees = 2.790 x 0.17365.
TEST(SpreaderTip, SideForceOfASpreaderOffTheBisector) {
  EXPECT_NEAR(tip_side_force(Force::kilonewtons(20), 8 * degree, 10 * degree)->kilonewtons(), 0.4845,
              0.00005);
}

struct Bend {
  SpacePoint above, tip, below, root;
  double share, degrees;
};
// Two invented boats, worked outside the project to the digits given: the thrust along the spreader over
// the tension of the line, and how far its resultant is off the spreader.
const Bend bends_of_two_boats[] = {
    // swept: cap at the upper tip, cap and intermediate at the lower one
    {at(-0.050, 0.070, 12.620), at(-0.324, 0.820, 9.130), at(-0.468, 1.200, 5.540),
     at(-0.030, 0.055, 9.050), 0.112, 4},
    {at(-0.324, 0.820, 9.130), at(-0.468, 1.200, 5.540), at(-0.620, 1.430, 1.100), at(-0.030, 0.060, 5.450),
     0.052, 15},
    {at(-0.040, 0.060, 8.980), at(-0.468, 1.200, 5.540), at(-0.660, 1.430, 1.100), at(-0.030, 0.060, 5.450),
     0.273, 9},
    // in line: the same three
    {at(0, 0.090, 16.660), at(-0.010, 0.950, 11.640), at(-0.010, 1.420, 6.430), at(0, 0.085, 11.550), 0.080,
     2},
    {at(-0.010, 0.950, 11.640), at(-0.010, 1.420, 6.430), at(-0.030, 1.720, 1.320), at(0, 0.085, 6.350),
     0.031, 8},
    {at(0, 0.085, 11.450), at(-0.010, 1.420, 6.430), at(0.030, 1.700, 1.320), at(0, 0.085, 6.350), 0.204,
     6}};

TEST(SpreaderTip, BendsOfTwoBoats) {
  for (const Bend& bend : bends_of_two_boats) {
    const auto tip = tip_bend(bend.above, bend.tip, bend.below, bend.root);
    ASSERT_TRUE(tip);
    EXPECT_NEAR(tip->thrust_share, bend.share, 0.0005);
    EXPECT_NEAR(tip->off_spreader_radians / degree, bend.degrees, 0.5);
    EXPECT_EQ(tip->push, TipPush::inwards);
    EXPECT_NEAR(bend_thrust(Force::newtons(1), tip->bend_radians)->newtons(), tip->resultant_share, 1e-12);
  }
}

TEST(SpreaderTip, ATipInsideTheStraightLineIsPulledOutwards) {
  const auto tip = tip_bend(at(0, 0, 10), at(0, 0.9, 5), at(0, 2, 0), at(0, 0, 5));
  ASSERT_TRUE(tip);
  EXPECT_EQ(tip->push, TipPush::outwards);
  EXPECT_LT(tip->thrust_share, 0);
  EXPECT_LT(tip->off_spreader_radians, 12 * degree);
}

TEST(SpreaderTip, AStraightLinePushesNothing) {
  const auto tip = tip_bend(at(0, 0, 10), at(0, 1, 5), at(0, 2, 0), at(0, 0, 5));
  ASSERT_TRUE(tip);
  EXPECT_EQ(tip->push, TipPush::none);
  EXPECT_EQ(tip->bend_radians, 0);
  EXPECT_EQ(tip->thrust_share, 0);
}

TEST(SpreaderTip, ABendSquareToTheSpreaderPushesNothing) {
  const auto tip = tip_bend(at(1, 1, 10), at(0, 1, 5), at(1, 1, 0), at(0, 0, 5));
  ASSERT_TRUE(tip);
  EXPECT_EQ(tip->push, TipPush::none);
  EXPECT_NEAR(tip->off_spreader_radians / degree, 90, 1e-9);
}

TEST(SpreaderTip, IsNothingOutOfRange) {
  const double nan = std::nan("");
  const Force newton = Force::newtons(1);
  EXPECT_FALSE(bend_thrust(Force::newtons(-1), 0.1));
  EXPECT_FALSE(bend_thrust(newton, -0.1));
  EXPECT_FALSE(bend_thrust(newton, 3.2));
  EXPECT_FALSE(bend_thrust(newton, nan));
  EXPECT_FALSE(bisecting_elevation(0.1, 0.1));
  EXPECT_FALSE(bisecting_elevation(1.6, 0.1));
  EXPECT_FALSE(bisecting_elevation(nan, 0.1));
  EXPECT_FALSE(tip_side_force(newton, 0.1, -0.1));
  EXPECT_FALSE(tip_side_force(newton, 4, 0.1));
  EXPECT_FALSE(tip_bend(at(0, 0, 1), at(0, 0, 1), at(0, 0, 0), at(1, 0, 0)));
  EXPECT_FALSE(tip_bend(at(0, 0, 1), at(0, 0, 0), at(0, 0, 2), at(1, 0, 0)));
  EXPECT_FALSE(tip_bend(at(0, 0, 1), at(0, 1, 0), at(0, 0, -1), at(0, 1, 0)));
}

// Equilibrium: where the spreader lies in the bisector, the whole of 2 T sin(bend / 2) goes along it.
RC_GTEST_PROP(SpreaderTip, AlongTheBisectorAllIsThrust, ()) {
  const double half = *rc::gen::inRange(1, 80'000) / 1000.0 * degree;
  const double turn = *rc::gen::inRange(0, 360) * degree;
  const double long_part = *rc::gen::inRange(100, 9000) / 1000.0;
  const auto turned = [&](double inwards, double along) {
    return at(inwards * std::cos(turn), inwards * std::sin(turn), along);
  };
  const auto tip = tip_bend(turned(std::sin(half), std::cos(half)), at(0, 0, 0),
                            turned(long_part * std::sin(half), -long_part * std::cos(half)), turned(2, 0));
  RC_ASSERT(tip.has_value());
  RC_ASSERT(std::abs(tip->bend_radians - 2 * half) < 1e-9);
  RC_ASSERT(std::abs(tip->thrust_share / (2 * std::sin(half)) - 1) < 1e-9);
  RC_ASSERT(tip->off_spreader_radians < 1e-9);
  RC_ASSERT(tip->push == TipPush::inwards);
}

} // namespace
} // namespace spreader_tip_tests

} // namespace sheerpole::stay_directions_test
