#include "calculate/strength/stay_angle.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace sheerpole::stay_angle_test {
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
} // namespace sheerpole::stay_angle_test
