#include "calculate/physics/parabola_sag.hpp"

#include "calculate/physics/inextensible_catenary.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace sheerpole::parabola_sag_test {
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
} // namespace sheerpole::parabola_sag_test
