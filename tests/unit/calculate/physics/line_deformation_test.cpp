#include "calculate/physics/line_deformation.hpp"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>
#include <vector>

namespace sheerpole::line_deformation_test {
namespace axial_stiffness_tests {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double square_millimetre = 1e-6;

Length mm(double value) {
  return Length::millimetres(value);
}

// Plane geometry: 19 wires of d/5 in a circle of d; 6 mm is 0.76 x 28.274 = 21.49 mm2, 8 mm 38.20 mm2.
TEST(AxialStiffness, MetalOfOneByNineteen) {
  EXPECT_NEAR(fill_of_one_by_nineteen, 19 * std::pow(1.0 / 5, 2), 1e-15);
  EXPECT_NEAR(*metallic_area(mm(6), fill_of_one_by_nineteen) / square_millimetre, 21.49, 0.005);
  EXPECT_NEAR(*metallic_area(mm(8), fill_of_one_by_nineteen) / square_millimetre, 38.20, 0.005);
  EXPECT_NEAR(*gross_area(mm(8)) / square_millimetre, 50.27, 0.005);
}

// 107.5 GPa on the gross area is common practice, no source; 107.5 / 0.76 = 141.4 by hand. The stiffness is
// the same whichever pair is used.
TEST(AxialStiffness, AModulusBelongsToItsArea) {
  const double metallic = *modulus_on_metallic_area(107.5e9, fill_of_one_by_nineteen);
  EXPECT_NEAR(metallic / 1e9, 141.4, 0.05);
  const double of_gross = axial_stiffness(107.5e9, *gross_area(mm(6)))->newtons();
  EXPECT_NEAR(axial_stiffness(metallic, *metallic_area(mm(6), fill_of_one_by_nineteen))->newtons(),
              of_gross, 1e-6);
  EXPECT_NEAR(of_gross / 1e6, 3.039, 0.0005); // 107.5 kN/mm2 x 28.274 mm2, by hand
  // Solid steel of 193 GPa on the gross area is wrong by nearly two: 193 / 107.5 = 1.795.
  EXPECT_NEAR(axial_stiffness(193e9, *gross_area(mm(6)))->newtons() / of_gross, 1.795, 0.001);
}

// Table of inch sizes at 130 GPa on the metallic area, worked by hand: 1/4 in 3129 kN, 5/16 in 4889 kN, 3/8
// in 7040 kN.
TEST(AxialStiffness, OfInchSizes) {
  const auto of = [](double inches) {
    return axial_stiffness(130e9, *metallic_area(Length::inches(inches), fill_of_one_by_nineteen))
        ->kilonewtons();
  };
  EXPECT_NEAR(of(1.0 / 4), 3129, 0.5);
  EXPECT_NEAR(of(5.0 / 16), 4889, 0.5);
  EXPECT_NEAR(of(3.0 / 8), 7040, 0.5);
}

// By hand: 10 m of 2 MN and 2 m of 1 MN give 5e-6 + 2e-6 m/N; 12 / 7e-6 = 1.714286 MN.
TEST(AxialStiffness, OfTwoPiecesInSeries) {
  const std::array pieces{StretchedPiece{Length::metres(10), Force::newtons(2e6)},
                          StretchedPiece{Length::metres(2), Force::newtons(1e6)}};
  EXPECT_NEAR(axial_stiffness_in_series(pieces)->newtons(), 12e6 / 7, 1e-3);
}

TEST(AxialStiffness, IsNothingOutOfRange) {
  EXPECT_FALSE(gross_area(mm(-1)));
  EXPECT_FALSE(metallic_area(mm(6), 0));
  EXPECT_FALSE(metallic_area(mm(6), 1.01));
  EXPECT_FALSE(metallic_area(mm(6), nan));
  EXPECT_FALSE(modulus_on_metallic_area(0, 0.76));
  EXPECT_FALSE(modulus_on_metallic_area(1e11, nan));
  EXPECT_FALSE(axial_stiffness(0, 1e-6));
  EXPECT_FALSE(axial_stiffness(1e11, nan));
  EXPECT_FALSE(axial_stiffness(1e300, 1e300));
  EXPECT_FALSE(axial_stiffness_in_series({}));
  const std::array no_stiffness{StretchedPiece{mm(10), Force::newtons(1)}, StretchedPiece{mm(10), Force()}};
  EXPECT_FALSE(axial_stiffness_in_series(no_stiffness));
  const std::array no_length{StretchedPiece{mm(0), Force::newtons(1)}};
  EXPECT_FALSE(axial_stiffness_in_series(no_length));
}

// What the pieces stretch one by one is what the even line stretches.
RC_GTEST_PROP(AxialStiffness, TheStretchesOfPiecesAddUp, ()) {
  const auto sizes = *rc::gen::nonEmpty(rc::gen::container<std::vector<std::pair<int, int>>>(
      rc::gen::pair(rc::gen::inRange(1, 20000), rc::gen::inRange(1, 10000))));
  const Force tension = Force::newtons(5000);
  std::vector<StretchedPiece> pieces;
  Length length;
  Length stretch;
  for (const auto& [millimetres, kilonewtons] : sizes) {
    pieces.push_back({mm(millimetres), Force::kilonewtons(kilonewtons)});
    length += pieces.back().length;
    stretch += *elastic_stretch(pieces.back().length, tension, pieces.back().axial_stiffness);
  }
  const Length whole = *elastic_stretch(length, tension, *axial_stiffness_in_series(pieces));
  RC_ASSERT(std::abs(whole / stretch - 1.0) < 1e-12);
}

} // namespace
} // namespace axial_stiffness_tests

namespace elastic_stretch_tests {
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
} // namespace elastic_stretch_tests

namespace thermal_growth_tests {
namespace {

// 316 of EN 10088-1, aluminium and the axial value of HMPE fibre of handbooks, all from memory.
constexpr double stainless = 16.0e-6;
constexpr double hmpe = -12.0e-6;

Length metres(double value) {
  return Length::metres(value);
}
double growth_mm(double length, double expansion, double warming) {
  return thermal_growth(metres(length), expansion, warming)->millimetres();
}
double beyond_mm(double spar, double of_spar, double line, double of_line, double warming) {
  return spar_growth_beyond_line({metres(spar), of_spar}, {metres(line), of_line}, warming)->millimetres();
}

// By hand, a L dT.
TEST(ThermalGrowth, OfWireSparAndRope) {
  EXPECT_NEAR(growth_mm(10, stainless, 20), 3.20, 1e-9);
  EXPECT_NEAR(growth_mm(12, hmpe, 25), -3.60, 1e-9);
  EXPECT_NEAR(growth_mm(12, 23.4e-6, 25), 7.02, 1e-9);
  EXPECT_NEAR(growth_mm(15, 23.6e-6, 30), 10.62, 1e-9);
  EXPECT_NEAR(growth_mm(14.5, stainless, 30), 6.96, 1e-9);
  EXPECT_NEAR(growth_mm(14.5, hmpe, 30), -5.22, 1e-9);
}

// By hand: 12 m and 25 K with a spar of 23.4e-6; 12 m and 20 K with one of 24e-6.
TEST(ThermalGrowth, OfASparBeyondItsLine) {
  EXPECT_NEAR(beyond_mm(12, 23.4e-6, 12, stainless, 25), 2.22, 1e-9);
  EXPECT_NEAR(beyond_mm(12, 23.4e-6, 12, hmpe, 25), 10.62, 1e-9);
  EXPECT_NEAR(beyond_mm(12, 24e-6, 12, hmpe, 20), 8.64, 1e-9);
  EXPECT_NEAR(beyond_mm(12, 24e-6, 12, stainless, 20), 1.92, 1e-9);
  EXPECT_NEAR(beyond_mm(14.5, 23.6e-6, 14.5, hmpe, 30), 15.486, 1e-9);
  EXPECT_NEAR(beyond_mm(15, 23.6e-6, 14.5, stainless, 30), 10.62 - 6.96, 1e-9);
}

// By hand: 30 K between aluminium and 316 are a strain of 2.28e-4, on 6 mm 1x19 of 3.039 MN 693 N.
TEST(ThermalGrowth, TightensAWireOnARigidHull) {
  const Length growth = *spar_growth_beyond_line({metres(1), 23.6e-6}, {metres(1), stainless}, 30);
  EXPECT_NEAR(growth.metres(), 2.28e-4, 1e-12);
  const Force stiffness = *axial_stiffness(107.5e9, *gross_area(Length::millimetres(6)));
  EXPECT_NEAR(tension_from_stretch(metres(1), growth, stiffness)->newtons(), 693, 0.5);
}

TEST(ThermalGrowth, IsNothingOutOfRange) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(thermal_growth(metres(-1), stainless, 20));
  EXPECT_FALSE(thermal_growth(metres(1), nan, 20));
  EXPECT_FALSE(thermal_growth(metres(1), stainless, nan));
  EXPECT_FALSE(thermal_growth(metres(1), stainless, -1e5));
  EXPECT_FALSE(thermal_growth(metres(1), stainless, std::numeric_limits<double>::infinity()));
  EXPECT_FALSE(spar_growth_beyond_line({metres(-1), 23e-6}, {metres(1), stainless}, 20));
  EXPECT_FALSE(spar_growth_beyond_line({metres(1), 23e-6}, {metres(1), nan}, 20));
}

} // namespace
} // namespace thermal_growth_tests

namespace line_comparison_tests {
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
} // namespace line_comparison_tests

} // namespace sheerpole::line_deformation_test
