#include "calculate/physics/rope_work.hpp"

#include "calculate/cut/eye_allowance.hpp"
#include "units/si_factors.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace sheerpole::rope_work_test {
namespace fid_length_tests {
namespace {

Length mm(double value) {
  return Length::millimetres(value);
}
Length inches(double value) {
  return Length::inches(value);
}

// A public table of fid sizes: 4 in rope has a fid of 84 in, 12 mm rope one of 252 mm; 21 d.
TEST(FidLength, IsTwentyOneDiameters) {
  EXPECT_NEAR(fid_length(inches(4))->inches(), 84, 1e-9);
  EXPECT_NEAR(fid_length(mm(12))->millimetres(), 252, 1e-9);
  EXPECT_NEAR(fid_length(mm(10), 22)->millimetres(), 220, 1e-9);
}

// The same table: the short section of the tubular fid for 1/4 in, 5 1/2 in long, is 2 1/16 in; 0.30 for
// 9/16 to 3/4 in and 0.25 for 7/8 in and more.
TEST(FidLength, ShortSection) {
  EXPECT_NEAR(5.5 * *short_section_share(inches(1.0 / 4)), 2.0625, 1e-12);
  EXPECT_EQ(*short_section_share(inches(1.0 / 2)), 0.375);
  EXPECT_EQ(*short_section_share(inches(9.0 / 16)), 0.30);
  EXPECT_EQ(*short_section_share(inches(3.0 / 4)), 0.30);
  EXPECT_EQ(*short_section_share(inches(7.0 / 8)), 0.25);
  EXPECT_EQ(*short_section_share(inches(4)), 0.25);
  // Metric sizes go with their neighbours of the table: 13 mm with 1/2 in, 14 with 9/16, 20 with 3/4, 22
  // with 7/8.
  EXPECT_EQ(*short_section_share(mm(13)), 0.375);
  EXPECT_EQ(*short_section_share(mm(14)), 0.30);
  EXPECT_EQ(*short_section_share(mm(20)), 0.30);
  EXPECT_EQ(*short_section_share(mm(22)), 0.25);
  EXPECT_EQ(*short_section_share(mm(6)), 0.375);
  EXPECT_FALSE(short_section_share(mm(5)));
}

// Common practice, no source: in 10 mm rope the tail is 420 mm and comes out 630 mm from the mark.
TEST(FidLength, MarksOfThePlainSplice) {
  const PlainSpliceMarks marks = *plain_splice_marks(mm(10));
  EXPECT_NEAR(marks.tail.millimetres(), 420, 1e-9);
  EXPECT_NEAR(marks.exit.millimetres(), 630, 1e-9);
}

// By hand: 72 / 21 = 3.43; 3 1/2 fids are 73.5 d; 72 d of 6, 8 and 10 mm are 432, 576 and 720 mm.
TEST(FidLength, LengthsInFids) {
  EXPECT_NEAR(*length_in_fids(mm(72 * 9), mm(9)), 3.43, 0.005);
  EXPECT_NEAR(*length_in_fids(mm(588), mm(8)), 3.5, 1e-9);
  EXPECT_NEAR(*length_in_fids(mm(432), mm(6)), *length_in_fids(mm(720), mm(10)), 1e-12);
}

TEST(FidLength, IsNothingOutOfRange) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(fid_length(mm(0)));
  EXPECT_FALSE(fid_length(mm(10), 0));
  EXPECT_FALSE(fid_length(mm(10), nan));
  EXPECT_FALSE(length_in_fids(mm(100), mm(-1)));
  EXPECT_FALSE(short_section_share(mm(0)));
  EXPECT_FALSE(plain_splice_marks(mm(0)));
  EXPECT_FALSE(plain_splice_marks(mm(10), nan));
}

} // namespace
} // namespace fid_length_tests

namespace eye_loop_tests {
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
} // namespace eye_loop_tests

namespace lashing_share_tests {
namespace {

struct Worked {
  double friction, three, four, six;
};
// Worked by hand from the capstan law, legs summed one by one, half a turn round each eye.
constexpr Worked worked[] = {
    {0.05, 0.70, 0.615, 0.486},
    {0.08, 0.584, 0.487, 0.357},
    {0.10, 0.524, 0.426, 0.302},
    {0.15, 0.417, 0.325, 0.221},
};

TEST(LashingShare, GivesTheWorkedValues) {
  for (const auto& [friction, three, four, six] : worked) {
    EXPECT_NEAR(*lashing_share(friction, 3), three, 0.0005);
    EXPECT_NEAR(*lashing_share(friction, 4), four, 0.0005);
    EXPECT_NEAR(*lashing_share(friction, 6), six, 0.0005);
  }
}

TEST(LashingShare, WithoutFrictionAllLegsPullAlike) {
  EXPECT_EQ(*lashing_share(0, 4), 1);
  EXPECT_EQ(*lashing_share(0.1, 4, 0), 1);
}

TEST(LashingShare, IsNothingOutOfRange) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(lashing_share(-0.1, 4));
  EXPECT_FALSE(lashing_share(nan, 4));
  EXPECT_FALSE(lashing_share(0.1, 0));
  EXPECT_FALSE(lashing_share(0.1, 1001));
  EXPECT_FALSE(lashing_share(0.1, 4, -1));
  EXPECT_FALSE(lashing_share(0.1, 4, nan));
  EXPECT_FALSE(lashing_share(std::numeric_limits<double>::infinity(), 4));
}

RC_GTEST_PROP(LashingShare, IsTheMeanOfTheLegs, ()) {
  const double friction = *rc::gen::inRange(1, 100'000) / 100'000.0;
  const int turns = *rc::gen::inRange(1, 30);
  const double angle = *rc::gen::inRange(1, 700) / 100.0;
  double sum = 0;
  for (int leg = 0; leg < 2 * turns; ++leg)
    sum += std::exp(-friction * angle * leg);
  RC_ASSERT(std::abs(*lashing_share(friction, turns, angle) / (sum / (2 * turns)) - 1) < 1e-12);
}

} // namespace
} // namespace lashing_share_tests

} // namespace sheerpole::rope_work_test
