#include "calculate/physics/tape_correction.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace sheerpole::tape_correction_test {
namespace {

// Exact by definition.
constexpr double foot = 0.3048;
constexpr double pound_force = 4.4482216152605;
constexpr double square_inch = 0.0254 * 0.0254;
constexpr double nan = std::numeric_limits<double>::quiet_NaN();

Length feet(double value) {
  return Length::metres(value * foot);
}
Length mm(double value) {
  return Length::millimetres(value);
}
Force pounds(double value) {
  return Force::newtons(value * pound_force);
}
double in_feet(Length length) {
  return length.metres() / foot;
}

/// Pounds a foot as newtons a metre.
double pounds_per_foot(double value) {
  return value * pound_force / foot;
}

/// A E of a tape from square inches and pounds for each square inch.
Force stiffness(double square_inches, double psi) {
  return Force::newtons(square_inches * square_inch * psi * pound_force / square_inch);
}

/// Full bays and what is left over, each with its own sag.
double sag_of_bays(int bays, double bay, double rest, double pounds_a_foot, double pull) {
  const auto full = tape_sag_correction(feet(bay), pounds_per_foot(pounds_a_foot), pounds(pull));
  const auto last = tape_sag_correction(feet(rest), pounds_per_foot(pounds_a_foot), pounds(pull));
  EXPECT_TRUE(full && last);
  return bays * in_feet(*full) + in_feet(*last);
}

// Published examples: a lecture on taping corrections and the encyclopaedia article Tape correction
// (surveying); the tolerance is half of the last printed digit.
TEST(TapeCorrection, SlopeOfThePublishedExample) {
  const Length correction = *tape_slope_correction(feet(300), 5 * degree);
  EXPECT_NEAR(in_feet(correction), -1.14, 0.005);
  EXPECT_NEAR(300 + in_feet(correction), 298.86, 0.005);
}

TEST(TapeCorrection, TemperatureOfThePublishedExample) {
  // 22 degF against 68 degF; 6.5e-6 for each degF, whose size is 5/9 K.
  const Length correction = *tape_temperature_correction(feet(368.50), 6.5e-6 * 9 / 5, (22 - 68) * 5.0 / 9);
  EXPECT_NEAR(in_feet(correction), -0.11, 0.005);
  EXPECT_NEAR(368.50 + in_feet(correction), 368.39, 0.005);
}

TEST(TapeCorrection, StandardisationOfThePublishedExample) {
  EXPECT_NEAR(in_feet(*tape_standardisation_correction(feet(500), feet(100), feet(100.02))), 0.10, 0.005);
}

TEST(TapeCorrection, SagOfThePublishedExamples) {
  EXPECT_NEAR(sag_of_bays(3, 100, 48.75, 0.028, 12), -0.71, 0.005);
  EXPECT_NEAR(sag_of_bays(3, 100, 48.75, 0.028, 18), -0.31, 0.005);
  EXPECT_NEAR(sag_of_bays(6, 50, 48.75, 0.028, 12), -0.20, 0.005);
}

TEST(TapeCorrection, PullOfThePublishedExample) {
  EXPECT_NEAR(in_feet(*tape_pull_correction(feet(100), pounds(18), pounds(12), stiffness(0.015, 29e6))),
              0.0014, 0.00005);
}

// Inputs of an example in Mahun's open-access surveying text on taping; the results were worked by hand
// from them, since the printed answer was not at hand. 436.48 ft; tape 100.004 ft; 50 degF against 70; 15
// lb against 23; 0.004 in2, 2.9e7 psi; 2.2 lb over 102 ft; two full bays and 36.48 ft.
TEST(TapeCorrection, AllOfOneReading) {
  const double standardisation =
      in_feet(*tape_standardisation_correction(feet(436.48), feet(100), feet(100.004)));
  const double temperature =
      in_feet(*tape_temperature_correction(feet(436.48), 6.5e-6 * 9 / 5, (50 - 70) * 5.0 / 9));
  const double pull =
      in_feet(*tape_pull_correction(feet(436.48), pounds(15), pounds(23), stiffness(0.004, 2.9e7)));
  const double w = 2.2 / 102;
  const double bay = in_feet(*tape_sag_correction(feet(100), pounds_per_foot(w), pounds(15)));
  const double rest = in_feet(*tape_sag_correction(feet(36.48), pounds_per_foot(w), pounds(15)));
  EXPECT_NEAR(standardisation, 0.0175, 0.00005);
  EXPECT_NEAR(temperature, -0.0567, 0.00005);
  EXPECT_NEAR(pull, -0.0301, 0.00005);
  EXPECT_NEAR(bay, -0.0861, 0.0001); // 0.08615: between two printed digits
  EXPECT_NEAR(rest, -0.0042, 0.00005);
  EXPECT_NEAR(2 * bay + rest, -0.1765, 0.00005);
  EXPECT_NEAR(436.48 + standardisation + temperature + pull + 2 * bay + rest, 436.234, 0.0005);
}

// Worked by hand from the same formulas: a steel tape of 30 m, 3 mm2, 200 GPa, 0.0235 kg/m; weight
// with 9.80665 m/s2.
TEST(TapeCorrection, OfASteelTapeOfThirtyMetres) {
  EXPECT_NEAR(tape_temperature_correction(mm(30000), 11.6e-6, 4 - 20)->millimetres(), -5.57, 0.005);
  EXPECT_NEAR(
      tape_pull_correction(mm(30000), Force::newtons(90), Force::newtons(50), Force::newtons(3e-6 * 200e9))
          ->millimetres(),
      2.00, 0.005);
  EXPECT_NEAR(tape_sag_correction(mm(30000), 0.0235 * 9.80665, Force::newtons(90))->millimetres(), -7.38,
              0.005);
}

// Worked by hand: 15 m of a tape of 0.200 N/m. 0.04 x 3375 / (24 x 400) = 14.0625 mm; / (24 x 2500) = 2.25
// mm.
TEST(TapeCorrection, OfALightTapeOnBoard) {
  EXPECT_NEAR(tape_sag_correction(mm(15000), 0.200, Force::newtons(20))->millimetres(), -14.0625, 1e-9);
  EXPECT_NEAR(tape_sag_correction(mm(15000), 0.200, Force::newtons(50))->millimetres(), -2.25, 1e-9);
  EXPECT_NEAR(tape_temperature_correction(mm(15000), 11.5e-6, 15)->millimetres(), 2.6, 0.05);
  EXPECT_NEAR(tape_slope_correction(mm(12000), 1 * degree)->millimetres(), -1.83, 0.005);
}

// cos 60 = 1/2, its square a quarter.
TEST(TapeCorrection, SagOnASlopeHasTheSquareOfItsCosine) {
  const double level = tape_sag_correction(mm(15000), 0.2, Force::newtons(20))->metres();
  EXPECT_NEAR(tape_sag_correction(mm(15000), 0.2, Force::newtons(20), 60 * degree)->metres(), level / 4,
              1e-15);
  EXPECT_NEAR(tape_sag_correction(mm(15000), 0.2, Force::newtons(20), -60 * degree)->metres(), level / 4,
              1e-15);
}

// The exact catenary, ends pulled with P: its length, 2 a sinh u, less its chord, 2 a u, with P = a w cosh
// u; worked by bisection outside the project for w L / (8 P) = 1/16 and 1/32 of a metre of tape.
TEST(TapeCorrection, SagIsNearTheCatenaryUpToItsLimit) {
  EXPECT_NEAR(tape_sag_correction(mm(1000), 0.5, Force::newtons(1))->metres() / -0.01079043316915107, 0.965,
              0.0005);
  EXPECT_NEAR(tape_sag_correction(mm(1000), 0.25, Force::newtons(1))->metres() / -0.002626782829517227,
              0.991, 0.0005);
  EXPECT_FALSE(tape_sag_correction(mm(1000), 0.501, Force::newtons(1)));
}

TEST(TapeCorrection, IsNothingOutOfRange) {
  const Force one = Force::newtons(1);
  EXPECT_FALSE(tape_standardisation_correction(mm(100), mm(0), mm(100)));
  EXPECT_FALSE(tape_standardisation_correction(mm(100), mm(100), mm(-1)));
  EXPECT_FALSE(tape_temperature_correction(mm(100), nan, 1));
  EXPECT_FALSE(tape_temperature_correction(mm(100), 1e-5, std::numeric_limits<double>::infinity()));
  EXPECT_FALSE(tape_temperature_correction(mm(100), 1e-5, -1e5));
  EXPECT_FALSE(tape_pull_correction(mm(100), one, one, Force()));
  EXPECT_FALSE(tape_pull_correction(mm(100), -one, one, one));
  EXPECT_FALSE(tape_sag_correction(mm(100), 0.1, Force()));
  EXPECT_FALSE(tape_sag_correction(mm(100), nan, one));
  EXPECT_FALSE(tape_sag_correction(mm(100), -0.1, one));
  EXPECT_FALSE(tape_sag_correction(mm(-100), 0.1, one));
  EXPECT_FALSE(tape_sag_correction(mm(100), 0.1, one, 91 * degree));
  EXPECT_FALSE(tape_slope_correction(mm(100), 91 * degree));
  EXPECT_FALSE(tape_slope_correction(mm(100), nan));
}

RC_GTEST_PROP(TapeCorrection, ASlopeAndItsRiseMakeARightTriangle, ()) {
  const double angle = *rc::gen::inRange(-8900, 8901) / 100.0 * degree;
  const double s = *rc::gen::inRange(1, 30000) / 1000.0;
  const double level = s + tape_slope_correction(Length::metres(s), angle)->metres();
  RC_ASSERT(std::abs(std::hypot(level, s * std::sin(angle)) - s) < 1e-12 * s);
}

} // namespace
} // namespace sheerpole::tape_correction_test
