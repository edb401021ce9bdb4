#include "calculate/physics/eye_loop.hpp"

#include "calculate/cut/eye_allowance.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace sheerpole::eye_loop_test {
namespace {

Length mm(double value) {
  return Length::millimetres(value);
}

struct Worked {
  double bearing, rope, throat, degrees, loop, share;
};
// Worked by hand from the plane geometry; mm and degrees.
constexpr Worked worked[] = {{16, 8, 40, 17.46, 121.33, 0.5241},
                             {16, 8, 72, 9.59, 183.70, 0.5071},
                             {24, 8, 60, 15.47, 174.56, 0.5188},
                             {10, 6, 45, 10.24, 116.56, 0.5081}};

TEST(EyeLoop, GivesTheWorkedValues) {
  for (const auto& [bearing, rope, throat, degrees, loop, share] : worked) {
    const auto eye = eye_loop(mm(bearing), mm(rope), mm(throat));
    ASSERT_TRUE(eye);
    EXPECT_NEAR(eye->half_angle_radians / degree, degrees, 0.005);
    EXPECT_NEAR(eye->loop.millimetres(), loop, 0.005);
    EXPECT_NEAR(eye->leg_share, share, 0.00005);
  }
}

// The throat angle of an eye in a line without thickness: pin 10 mm, throat 30 mm from its centre, 2 asin(5
// / 30) = 19.19 degrees; eyes of three, four and five pins, 2 asin(0.5 / (k - 0.5)): 23.1, 16.4 and 12.8
// degrees.
TEST(EyeLoop, ThroatAngle) {
  const auto degrees = [](double pin, double throat) {
    return 2 * eye_loop(mm(pin), mm(0), mm(throat))->half_angle_radians / degree;
  };
  EXPECT_NEAR(degrees(10, 30), 19.19, 0.005);
  EXPECT_NEAR(degrees(10, 25), 23.1, 0.05);
  EXPECT_NEAR(degrees(10, 35), 16.4, 0.05);
  EXPECT_NEAR(degrees(10, 45), 12.8, 0.05);
}

// Equilibrium: two legs at 60 degrees to the pull each carry all of it.
TEST(EyeLoop, LegsAtSixtyDegrees) {
  const auto eye = eye_loop(mm(20), mm(0), mm(10 / std::sin(60 * degree)));
  EXPECT_NEAR(eye->half_angle_radians / degree, 60, 1e-9);
  EXPECT_NEAR(eye->leg_share, 1.0, 1e-9);
}

// Worked by hand: pins 10 000 mm apart, both eyes on a bare 16 mm pin, rope 8 mm, eye of three pins so that
// the throat is 2.5 x 16 mm from the centre, bury 72 d. Between the throats 10 000 - 2 x 40 = 9920 mm; with
// two loops and two burys 11 314.65 mm.
TEST(EyeLoop, ComposesTheCutOfASplicedLine) {
  const double throat = 2.5 * 16;
  const double standing = 10000 - 2 * throat;
  EXPECT_NEAR(standing, 9920, 1e-9);
  const double loop = eye_loop(mm(16), mm(8), mm(throat))->loop.millimetres();
  EXPECT_NEAR(standing + 2 * (loop + 72 * 8), 11314.65, 0.005);
}

// The same outline: a line without thickness round a seat as large as the centreline.
TEST(EyeLoop, IsTheEyePerimeterOfTheCentreline) {
  for (const auto& row : worked)
    EXPECT_NEAR(eye_loop(mm(row.bearing), mm(row.rope), mm(row.throat))->loop.millimetres(),
                eye_perimeter(mm((row.bearing + row.rope) / 2), mm(0), mm(row.throat))->millimetres(),
                1e-9);
}

TEST(EyeLoop, IsNothingWhenTheThroatLiesInTheRope) {
  EXPECT_FALSE(eye_loop(mm(16), mm(8), mm(12)));
  EXPECT_FALSE(eye_loop(mm(16), mm(8), mm(-40)));
  EXPECT_FALSE(eye_loop(mm(-1), mm(8), mm(40)));
  EXPECT_FALSE(eye_loop(mm(16), mm(-8), mm(40)));
  EXPECT_FALSE(eye_loop(mm(0), mm(0), mm(40)));
}

// A real eye in both forms: where its legs end side by side at s, they would go on to cross at h = s +
// (d/2) / tan(alpha), each leg (d/2) / sin(alpha) longer. By plane geometry alpha is the angle of those
// legs.
RC_GTEST_PROP(EyeLoop, AgreesWithTheEyePerimeterBeyondItsThroat, ()) {
  const double seat = *rc::gen::inRange(10, 2000) / 10.0;
  const double rope = *rc::gen::inRange(10, 400) / 10.0;
  const double side_by_side = seat + rope + *rc::gen::inRange(0, 10000) / 10.0;
  // Angle of the leg from the side-by-side throat to its tangent point.
  const double radius = seat + rope / 2;
  const double alpha =
      std::asin(radius / std::hypot(side_by_side, rope / 2)) - std::atan2(rope / 2, side_by_side);
  RC_PRE(alpha > 0.01);
  const double crossing = side_by_side + rope / 2 / std::tan(alpha);
  const auto eye = eye_loop(mm(2 * seat), mm(rope), mm(crossing));
  RC_ASSERT(eye.has_value());
  RC_ASSERT(std::abs(eye->half_angle_radians - alpha) < 1e-9);
  const double shorter = eye_perimeter(mm(seat), mm(rope), mm(side_by_side))->millimetres();
  RC_ASSERT(std::abs(eye->loop.millimetres() - shorter - rope / std::sin(alpha)) < 1e-6);
}

} // namespace
} // namespace sheerpole::eye_loop_test
