#include "calculate/physics/line_comparison.hpp"

#include <gtest/gtest.h>

#include <limits>

namespace sheerpole::line_comparison_test {
namespace {

Length metres(double value) {
  return Length::metres(value);
}

// 9 mm heat-set HMPE: break 117 kN, EA 35 times that, 0.0567 kg/m; common practice, no source. 6 mm 1x19 in
// 316: 28.24 kN, 0.172 kg/m of the trade series (common practice, no source), EA 130 GPa x 21.49 mm2 =
// 2793.7 kN.
const LineProperties rope{Force::kilonewtons(4095), Force::kilonewtons(117), 0.0567};
const LineProperties wire{Force::kilonewtons(2793.7), Force::kilonewtons(28.24), 0.172};

// By hand: 4095 / 2793.7, 117 / 28.24, 0.0567 / 0.172.
TEST(LineComparison, RopeOverWire) {
  const LineRatios ratios = *line_ratios(rope, wire);
  EXPECT_NEAR(ratios.stiffness, 1.4658, 0.00005);
  EXPECT_NEAR(ratios.strength, 4.1431, 0.00005);
  EXPECT_NEAR(ratios.mass, 0.32965, 0.000005);
  const LineRatios other_way = *line_ratios(wire, rope);
  EXPECT_NEAR(other_way.stiffness * ratios.stiffness, 1, 1e-12);
  EXPECT_NEAR(other_way.strength * ratios.strength, 1, 1e-12);
  EXPECT_NEAR(other_way.mass * ratios.mass, 1, 1e-12);
}

// By hand: 12.3 m from 0.3 to 12.1 m above the deck, 0.172 kg/m: 2.1156 kg at 6.2 m, 13.11672 kg m.
TEST(LineComparison, MassOfAStayAloft) {
  const MassAloft aloft = *mass_aloft(0.172, metres(12.3), metres(0.3), metres(12.1));
  EXPECT_NEAR(aloft.mass_kilograms, 2.1156, 1e-12);
  EXPECT_NEAR(aloft.centre_height.metres(), 6.2, 1e-12);
  EXPECT_NEAR(aloft.moment_kilogram_metres, 13.11672, 1e-12);
  EXPECT_EQ(mass_aloft(0.172, metres(12.3), metres(12.1), metres(0.3))->moment_kilogram_metres,
            aloft.moment_kilogram_metres);
}

// Common practice, no source: 90 lb less at 25 ft is 1125 lbf ft less moment at 30 degrees of heel (sine
// 1/2).
TEST(LineComparison, WeightAloftAtThirtyDegrees) {
  const double pound = 0.45359237; // kg, exact
  const double foot = 0.3048;      // m, exact
  const MassAloft aloft =
      *mass_aloft(90 * pound / (50 * foot), metres(50 * foot), Length(), metres(50 * foot));
  EXPECT_NEAR(aloft.moment_kilogram_metres / (pound * foot) * 0.5, 1125, 1e-9);
}

TEST(LineComparison, BelowTheDeckTheMomentIsNegative) {
  EXPECT_NEAR(mass_aloft(1, metres(1), metres(-1), Length())->moment_kilogram_metres, -0.5, 1e-15);
}

TEST(LineComparison, IsNothingOutOfRange) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const auto without = [](LineProperties line, auto change) {
    change(line);
    return line;
  };
  for (const LineProperties& bad :
       {without(rope, [](LineProperties& line) { line.axial_stiffness = Force(); }),
        without(rope, [](LineProperties& line) { line.break_load = Force::newtons(-1); }),
        without(rope, [](LineProperties& line) { line.linear_mass_kilograms_per_metre = 0; }),
        without(rope, [nan](LineProperties& line) { line.linear_mass_kilograms_per_metre = nan; })}) {
    EXPECT_FALSE(line_ratios(bad, wire));
    EXPECT_FALSE(line_ratios(wire, bad));
  }
  EXPECT_FALSE(mass_aloft(0, metres(10), metres(0), metres(5)));
  EXPECT_FALSE(mass_aloft(nan, metres(10), metres(0), metres(5)));
  EXPECT_FALSE(mass_aloft(0.1, metres(0), metres(0), metres(0)));
  EXPECT_FALSE(mass_aloft(0.1, metres(10), metres(0), metres(10.1)));
  EXPECT_FALSE(mass_aloft(1e300, metres(1e300), metres(0), metres(1)));
}

} // namespace
} // namespace sheerpole::line_comparison_test
