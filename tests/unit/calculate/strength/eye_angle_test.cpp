#include "calculate/strength/eye_angle.hpp"

#include "calculate/physics/eye_loop.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>

namespace sheerpole::eye_angle_test {
namespace {

Length mm(double value) {
  return Length::millimetres(value);
}

// By hand: pin 10 mm, throat 30 mm from its centre, 2 asin(5 / 30).
TEST(EyeAngle, FromThePinsCentre) {
  EXPECT_NEAR(*eye_angle(mm(10), mm(30)) / degree, 19.19, 0.005);
}

// By hand: 2 asin(0.5 / (k - 0.5)) of eyes three, four and five pins long.
TEST(EyeAngle, OfTheInsideLength) {
  EXPECT_NEAR(*eye_angle_of_inside_length(mm(10), mm(30)) / degree, 23.1, 0.05);
  EXPECT_NEAR(*eye_angle_of_inside_length(mm(10), mm(40)) / degree, 16.4, 0.05);
  EXPECT_NEAR(*eye_angle_of_inside_length(mm(10), mm(50)) / degree, 12.8, 0.05);
}

TEST(EyeAngle, IsThatOfALoopWithoutThickness) {
  EXPECT_NEAR(*eye_angle(mm(16), mm(40)), 2 * eye_loop(mm(16), mm(0), mm(40))->half_angle_radians, 1e-12);
}

TEST(EyeAngle, IsNothingWhenTheThroatLiesInThePin) {
  EXPECT_FALSE(eye_angle(mm(10), mm(5)));
  EXPECT_FALSE(eye_angle(mm(0), mm(5)));
  EXPECT_FALSE(eye_angle_of_inside_length(mm(10), mm(10)));
}

} // namespace
} // namespace sheerpole::eye_angle_test
