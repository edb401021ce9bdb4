#include "calculate/strength/righting_moment.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>

#include <limits>

namespace sheerpole::righting_moment_test {
namespace {

constexpr double pound = 4.4482216152605; // N, exact
constexpr double foot = 0.3048;           // m, exact

Length feet(double value) {
  return Length::metres(value * foot);
}

// By hand: 4100 kg x 9.80665 x 1.0 m x sin 10 degrees = 40 207.3 x 0.1736482 = 6981.9 N m.
TEST(RightingMoment, SmallAngle) {
  EXPECT_NEAR(*small_angle_righting_moment(4100, Length::metres(1.0), 10 * degree), 6981.9, 0.05);
  EXPECT_LT(*small_angle_righting_moment(4100, Length::metres(-0.1), 10 * degree), 0);
  EXPECT_EQ(*small_angle_righting_moment(4100, Length::metres(1.0), 0), 0);
}

// Common practice, no source, exact as statics: 90 lb at 25 ft is 1125 lbf ft at 30 degrees, not the 2250
// of w z.
TEST(RightingMoment, OfAWeightAloft) {
  const double moment = *righting_moment_of_weight_aloft(Force::newtons(90 * pound), feet(25), 30 * degree);
  EXPECT_NEAR(moment / (pound * foot), 1125, 1e-9);
}

// Skene's graph as reprinted in Toss, The Complete Rigger's Apprentice, fig. 5-24: 37 000 and 80 000 lbf ft
// at 32 and 40 ft. Between and below, the power of 3.456 worked by hand from those two.
TEST(RightingMoment, ByWaterline) {
  const auto lbf_ft = [](double waterline) {
    return righting_moment_by_waterline(righting_moment_graph, feet(waterline))->newton_metres /
           (pound * foot);
  };
  EXPECT_NEAR(lbf_ft(32), 37'000, 1e-6);
  EXPECT_NEAR(lbf_ft(40), 80'000, 1e-6);
  EXPECT_NEAR(lbf_ft(36), 55'600, 50);
  EXPECT_NEAR(lbf_ft(27), 20'600, 50);
  EXPECT_NEAR(lbf_ft(30), 29'600, 50);
  EXPECT_NEAR(lbf_ft(33.67), 44'100, 50);
}

// What users of the graph read, in examples after the same book: 30 000 lbf ft at 30 ft, 46 000 to 47 000
// at 33.67 ft. Both lie well within the scatter.
TEST(RightingMoment, ScatterHoldsTheReadingsOfOthers) {
  const auto holds = [](double waterline, double lbf_ft) {
    const auto range = *righting_moment_by_waterline(righting_moment_graph, feet(waterline));
    const double moment = lbf_ft * pound * foot;
    return range.least_newton_metres < moment && moment < range.most_newton_metres;
  };
  EXPECT_TRUE(holds(30, 30'000));
  EXPECT_TRUE(holds(33.67, 47'000));
  EXPECT_FALSE(holds(30, 47'000));
  const auto range = *righting_moment_by_waterline(righting_moment_graph, feet(36));
  EXPECT_NEAR(range.least_newton_metres / range.newton_metres, 0.7, 1e-12);
  EXPECT_NEAR(range.most_newton_metres / range.newton_metres, 1.3, 1e-12);
}

TEST(RightingMoment, IsNothingOutOfRange) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const Length metre = Length::metres(1);
  EXPECT_FALSE(small_angle_righting_moment(0, metre, 0.1));
  EXPECT_FALSE(small_angle_righting_moment(nan, metre, 0.1));
  EXPECT_FALSE(small_angle_righting_moment(1, metre, -0.1));
  EXPECT_FALSE(small_angle_righting_moment(1, metre, 91 * degree));
  EXPECT_FALSE(small_angle_righting_moment(1, metre, nan));
  EXPECT_FALSE(righting_moment_of_weight_aloft(Force::newtons(-1), metre, 0.1));
  EXPECT_FALSE(righting_moment_of_weight_aloft(Force::newtons(1), metre, nan));
  EXPECT_FALSE(righting_moment_by_waterline(righting_moment_graph, Length()));
  RightingMomentCurve falling = righting_moment_graph;
  falling.longer_newton_metres = 1;
  EXPECT_FALSE(righting_moment_by_waterline(falling, metre));
  RightingMomentCurve wide = righting_moment_graph;
  wide.scatter = 1;
  EXPECT_FALSE(righting_moment_by_waterline(wide, metre));
}

} // namespace
} // namespace sheerpole::righting_moment_test
