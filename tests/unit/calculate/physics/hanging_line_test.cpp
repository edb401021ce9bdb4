#include "calculate/physics/catenary.hpp"

#include "calculate/physics/physical_values.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace sheerpole::hanging_line_test {
namespace inextensible_catenary_tests {
namespace {

Length metres(double value) {
  return Length::metres(value);
}

// Worked outside the project by bisection of the closed form: span 100, sag 10.
TEST(InextensibleCatenary, OfSpanHundredAndSagTen) {
  const Length parameter = *catenary_parameter(metres(100), metres(10));
  EXPECT_NEAR(parameter.metres(), 126.63244, 0.000005);
  EXPECT_NEAR(catenary_length(metres(100), parameter)->metres(), 102.61869, 0.000005);
  EXPECT_NEAR(catenary_sag(metres(100), parameter)->metres(), 10, 1e-12);
}

// By hand: a = 1 and L = 2 ln 2 give cosh(ln 2) - 1 = 1.25 - 1 and 2 sinh(ln 2) = 1.5.
TEST(InextensibleCatenary, OfAWholeNumber) {
  const Length span = metres(2 * std::log(2.0));
  EXPECT_NEAR(catenary_sag(span, metres(1))->metres(), 0.25, 1e-15);
  EXPECT_NEAR(catenary_length(span, metres(1))->metres(), 1.5, 1e-15);
  EXPECT_NEAR(catenary_parameter(span, metres(0.25))->metres(), 1, 1e-14);
}

TEST(InextensibleCatenary, IsNothingOutOfRange) {
  EXPECT_FALSE(catenary_parameter(metres(0), metres(1)));
  EXPECT_FALSE(catenary_parameter(metres(1), metres(0)));
  EXPECT_FALSE(catenary_parameter(metres(1), metres(-1)));
  EXPECT_FALSE(catenary_parameter(metres(1), metres(1.1e6)));
  EXPECT_FALSE(catenary_sag(metres(1), metres(0)));
  EXPECT_FALSE(catenary_sag(metres(0), metres(1)));
  EXPECT_FALSE(catenary_sag(metres(1), metres(1e-6)));
  EXPECT_FALSE(catenary_length(metres(1), metres(0)));
  EXPECT_FALSE(catenary_length(metres(-1), metres(1)));
  EXPECT_FALSE(catenary_length(metres(1), metres(1e-6)));
}

// From a line as good as straight to one that hangs a million spans deep.
RC_GTEST_PROP(InextensibleCatenary, ParameterAndSagAreEachOthersInverse, ()) {
  const double span = *rc::gen::inRange(1, 1000) / 10.0;
  const double ratio = std::pow(10.0, *rc::gen::inRange(-1500, 600) / 100.0);
  const auto parameter = catenary_parameter(metres(span), metres(ratio * span));
  RC_ASSERT(parameter.has_value());
  RC_ASSERT(std::abs(catenary_sag(metres(span), *parameter)->metres() / (ratio * span) - 1.0) < 1e-12);
}

} // namespace
} // namespace inextensible_catenary_tests

namespace parabola_sag_tests {
namespace {

constexpr double gravity = 9.80665; // m/s2, exact by definition

Length metres(double value) {
  return Length::metres(value);
}

// By hand: 0.305 x 9.80665 x 15.78^2 / 80000 = 9.31 mm; 40 x 14^2 / 96000 = 81.7 mm, 8 x 81.667^2 / 42000
// = 1.27 mm.
TEST(ParabolaSag, OfStays) {
  EXPECT_NEAR(parabola_sag(metres(15.78), 0.305 * gravity, Force::kilonewtons(10))->millimetres(), 9.31,
              0.005);
  const Length sag = *parabola_sag(metres(14), 40, Force::kilonewtons(12));
  EXPECT_NEAR(sag.millimetres(), 81.7, 0.05);
  EXPECT_NEAR(parabola_extra_length(metres(14), sag)->millimetres(), 1.27, 0.005);
}

// By hand: a bend of 150 mm on 14 m shortens the chord by 8 x 0.15^2 / 42 = 4.29 mm.
TEST(ParabolaSag, ABendShortensTheChord) {
  EXPECT_NEAR(parabola_extra_length(metres(14), Length::millimetres(150))->millimetres(), 4.29, 0.005);
}

// The straight line is a line too.
TEST(ParabolaSag, WithoutWeightThereIsNone) {
  EXPECT_EQ(*parabola_sag(metres(14), 0, Force::newtons(1)), Length());
  EXPECT_EQ(*parabola_extra_length(metres(14), Length()), Length());
}

TEST(ParabolaSag, IsNothingOutOfRange) {
  const Force one = Force::newtons(1);
  EXPECT_FALSE(parabola_sag(metres(0), 0.1, one));
  EXPECT_FALSE(parabola_sag(metres(1), -0.1, one));
  EXPECT_FALSE(parabola_sag(metres(1), std::numeric_limits<double>::quiet_NaN(), one));
  EXPECT_FALSE(parabola_sag(metres(1), 0.1, Force()));
  EXPECT_TRUE(parabola_sag(metres(1), 0.5, one));
  EXPECT_FALSE(parabola_sag(metres(1), 0.501, one));
  EXPECT_FALSE(parabola_extra_length(metres(0), metres(0)));
  EXPECT_FALSE(parabola_extra_length(metres(1), metres(-0.01)));
  EXPECT_FALSE(parabola_extra_length(metres(1), metres(0.063)));
}

// Elementary statics: below a sixteenth of the span parabola and catenary of one horizontal tension differ
// by less than 1 % of the sag, and of the extra length.
RC_GTEST_PROP(ParabolaSag, DiffersFromTheCatenaryByLessThanOnePercent, ()) {
  const double span = *rc::gen::inRange(100, 40000) / 1000.0;
  const double ratio = *rc::gen::inRange(100, 6251) / 100'000.0;
  const double parameter = span / (8.0 * ratio); // H / w
  const Length parabola = *parabola_sag(metres(span), 1.0, Force::newtons(parameter));
  const Length catenary = *catenary_sag(metres(span), metres(parameter));
  RC_ASSERT(parabola < catenary);
  RC_ASSERT(catenary / parabola < 1.0053);
  const double extra = parabola_extra_length(metres(span), parabola)->metres();
  const double exact = catenary_length(metres(span), metres(parameter))->metres() - span;
  RC_ASSERT(std::abs(exact / extra - 1.0) < 0.0035);
}

} // namespace
} // namespace parabola_sag_tests

namespace taut_string_tests {
namespace {

Length metres(double value) {
  return Length::metres(value);
}

// By hand: 4 x 0.305 x 13^2 x 5^2 = 5154.5 N.
TEST(TautString, TensionFromFrequency) {
  EXPECT_NEAR(tension_from_frequency(0.305, metres(13), 5)->kilonewtons(), 5.155, 0.0006);
}

// By hand: 6 mm 1x19 of 0.1764 kg/m, 12 m free, 4.2 kN: sqrt(4200 / 0.1764) / 24 = 6.43 Hz.
TEST(TautString, FrequencyOfAStay) {
  EXPECT_NEAR(*first_mode_frequency(0.1764, metres(12), Force::newtons(4200)), 6.43, 0.005);
}

// A finite-element validation manual: one cable pretensioned with two forces and its frequencies. The ratio
// of the forces is the square of that of the frequencies.
TEST(TautString, TensionGoesWithTheSquareOfTheFrequency) {
  const double low = tension_from_frequency(0.2, metres(3), 62.73227096)->newtons();
  const double high = tension_from_frequency(0.2, metres(3), 88.72830898)->newtons();
  EXPECT_NEAR(low / high, 6171.050459855 / 12345.2954376, 1e-9);
}

// A note on pulse return for guyed towers: 56.6 lb for 250 ft, 100 ft, 0.75 s give 501 lbf, by w L^2 /
// (8.038 t^2). The theory has g/4 for 8.038: 32.1740 ft/s2 / 4 = 8.0435.
TEST(TautString, TensionFromThePulse) {
  const double pound = 0.45359237; // kg, exact
  const double foot = 0.3048;      // m, exact
  const double pound_force = pound * standard_gravity_metres_per_second_squared;
  const Force tension = *tension_from_pulse(56.6 / 250 * pound / foot, metres(100 * foot), 0.75);
  EXPECT_NEAR(tension.newtons() / pound_force, 501, 1);
  EXPECT_NEAR(tension.newtons() / pound_force, 0.2264 * 100 * 100 / (8.0435 * 0.75 * 0.75), 0.01);
}

TEST(TautString, IsNothingOutOfRange) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(tension_from_frequency(0, metres(1), 1));
  EXPECT_FALSE(tension_from_frequency(nan, metres(1), 1));
  EXPECT_FALSE(tension_from_frequency(0.1, metres(0), 1));
  EXPECT_FALSE(tension_from_frequency(0.1, metres(1), 0));
  EXPECT_FALSE(tension_from_frequency(0.1, metres(1), nan));
  EXPECT_FALSE(tension_from_frequency(0.1, metres(1), 1e200));
  EXPECT_FALSE(first_mode_frequency(0, metres(1), Force::newtons(1)));
  EXPECT_FALSE(first_mode_frequency(0.1, metres(-1), Force::newtons(1)));
  EXPECT_FALSE(first_mode_frequency(0.1, metres(1), Force()));
  EXPECT_FALSE(tension_from_pulse(0.1, metres(1), 0));
  EXPECT_FALSE(tension_from_pulse(0.1, metres(1), nan));
  EXPECT_FALSE(tension_from_pulse(0.1, metres(1), std::numeric_limits<double>::infinity()));
}

RC_GTEST_PROP(TautString, FrequencyAndTensionAreEachOthersInverse, ()) {
  const double mass = *rc::gen::inRange(1, 2000) / 1000.0;
  const Length length = metres(*rc::gen::inRange(1, 400) / 10.0);
  const double tension = *rc::gen::inRange(1, 200'000);
  const double frequency = *first_mode_frequency(mass, length, Force::newtons(tension));
  RC_ASSERT(std::abs(tension_from_frequency(mass, length, frequency)->newtons() / tension - 1) < 1e-12);
  RC_ASSERT(std::abs(tension_from_pulse(mass, length, 1 / frequency)->newtons() / tension - 1) < 1e-12);
}

} // namespace
} // namespace taut_string_tests

} // namespace sheerpole::hanging_line_test
