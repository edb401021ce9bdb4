#include "calculate/physics/elastic_stretch.hpp"

#include "calculate/physics/axial_stiffness.hpp"

#include <gtest/gtest.h>

#include <limits>

namespace sheerpole::elastic_stretch_test {
namespace {

constexpr double pound_force = 4.4482216152605; // exact by definition
constexpr double trade_modulus = 107.5e9;       // of 1x19 on the gross area; common practice, no source

Length mm(double value) {
  return Length::millimetres(value);
}
Force gross_stiffness(Length diameter) {
  return *axial_stiffness(trade_modulus, *gross_area(diameter));
}
Force metallic_stiffness(Length diameter) {
  return *axial_stiffness(130e9, *metallic_area(diameter, fill_of_one_by_nineteen));
}

// By hand: 5000 x 10 / (130e9 x 21.49e-6) = 17.90 mm; 4200 x 12 / 3.039e6 = 16.58 mm.
TEST(ElasticStretch, OfSixMillimetreWire) {
  EXPECT_NEAR(elastic_stretch(mm(10000), Force::newtons(5000), metallic_stiffness(mm(6)))->millimetres(),
              17.90, 0.005);
  EXPECT_NEAR(elastic_stretch(mm(12000), Force::newtons(4200), gross_stiffness(mm(6)))->millimetres(),
              16.58, 0.005);
}

// Common practice, no source: 1000 lbf stretch 40 ft of 1/4 in 1x19 by 5/8 in.
TEST(ElasticStretch, OfFortyFeetOfQuarterInchWire) {
  EXPECT_NEAR(elastic_stretch(Length::inches(480), Force::newtons(1000 * pound_force),
                              gross_stiffness(Length::inches(0.25)))
                  ->inches(),
              0.625, 0.02);
}

// By hand: 5 % of 45.5 kN over 2 m of 8 mm wire, 0.84 mm with 107.5 GPa on the gross area and 0.92 mm with
// 130 GPa on the metallic; 15 % is within 0.6 of the 3.0 mm of the rule (common practice, no source).
TEST(ElasticStretch, OverTwoMetres) {
  const Force five_percent = Force::newtons(0.05 * 45500);
  EXPECT_NEAR(elastic_stretch(mm(2000), five_percent, gross_stiffness(mm(8)))->millimetres(), 0.84, 0.005);
  EXPECT_NEAR(elastic_stretch(mm(2000), five_percent, metallic_stiffness(mm(8)))->millimetres(), 0.92,
              0.005);
  EXPECT_NEAR(elastic_stretch(mm(2000), five_percent * 3, gross_stiffness(mm(8)))->millimetres(), 3.0, 0.6);
}

// By hand: 4 mm on 11 m of 8 mm wire of 130 GPa is 1.81 kN; 2.54 mm at 344.75 N/mm is 875.7 N.
TEST(ElasticStretch, TensionOfOneTurnOfAScrew) {
  EXPECT_NEAR(tension_from_stretch(mm(11000), mm(4), metallic_stiffness(mm(8)))->kilonewtons(), 1.81,
              0.005);
  // 344.75 N/mm is an EA of 3447.5 kN over 10 m.
  EXPECT_NEAR(tension_from_stretch(mm(10000), mm(2.54), Force::kilonewtons(3447.5))->newtons(), 875.7,
              0.05);
}

// Common practice, no source: "1 mm in 2 m is 5 %", 3 mm 15 %, and 2 in over 33 ft half of the break load.
// That of 8 mm wire, by its stiffness, is within a fifth of the rule.
TEST(ElasticStretch, ShareOfBreakByTheRule) {
  EXPECT_NEAR(*share_of_break_from_stretch(mm(2000), mm(1), 0.01), 0.05, 1e-12);
  EXPECT_NEAR(*share_of_break_from_stretch(mm(2000), mm(3), 0.01), 0.15, 1e-12);
  EXPECT_NEAR(*share_of_break_from_stretch(Length::inches(396), Length::inches(2), 0.01), 0.5, 0.0125);
  const Force tension = *tension_from_stretch(mm(2000), mm(1), gross_stiffness(mm(8)));
  EXPECT_NEAR(tension.kilonewtons() / 45.5, 0.05, 0.2 * 0.05);
}

TEST(ElasticStretch, ASlackeningLineShortens) {
  EXPECT_LT(*elastic_stretch(mm(10000), Force::newtons(-1000), gross_stiffness(mm(6))), Length());
}

TEST(ElasticStretch, IsNothingOutOfRange) {
  const Force one = Force::newtons(1);
  EXPECT_FALSE(elastic_stretch(mm(-1), one, one));
  EXPECT_FALSE(elastic_stretch(mm(1), one, Force()));
  EXPECT_FALSE(elastic_stretch(Length::metres(1e200), Force::newtons(1e200), one));
  EXPECT_FALSE(tension_from_stretch(mm(0), mm(1), one));
  EXPECT_FALSE(tension_from_stretch(mm(1), mm(1), -one));
  EXPECT_FALSE(share_of_break_from_stretch(mm(0), mm(1), 0.01));
  EXPECT_FALSE(share_of_break_from_stretch(mm(2000), mm(1), 0));
  EXPECT_FALSE(share_of_break_from_stretch(mm(2000), mm(1), std::numeric_limits<double>::quiet_NaN()));
}

} // namespace
} // namespace sheerpole::elastic_stretch_test
