#include "calculate/cut/eye_allowance.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace sheerpole::eye_perimeter_test {
namespace {

Length mm(double value) {
  return Length::millimetres(value);
}

/// The outline summed as a fine polyline, without the closed form: the tangent point is found by bisection
/// as the place on the circle from which the throat is seen at a right angle to the radius.
double polyline_mm(double r, double d, double s) {
  const double radius = r + d / 2;
  const double leg_x = s;
  const double leg_y = d / 2;
  // Negative where the chord to the leg still cuts the circle, positive past the tangent point.
  const auto past = [&](double angle) {
    const double x = radius * std::cos(angle);
    const double y = radius * std::sin(angle);
    return -(x * (leg_x - x) + y * (leg_y - y));
  };
  double low = std::atan2(leg_y, leg_x);
  double high = std::numbers::pi;
  for (int i = 0; i < 200; ++i) {
    const double middle = (low + high) / 2;
    (past(middle) < 0 ? low : high) = middle;
  }
  const double tangent = std::hypot(leg_x - radius * std::cos(low), leg_y - radius * std::sin(low));
  const int steps = 200'000;
  double arc = 0;
  double x = radius * std::cos(low);
  double y = radius * std::sin(low);
  for (int i = 1; i <= steps; ++i) {
    const double angle = low + (std::numbers::pi - low) * i / steps;
    const double next_x = radius * std::cos(angle);
    const double next_y = radius * std::sin(angle);
    arc += std::hypot(next_x - x, next_y - y);
    x = next_x;
    y = next_y;
  }
  return 2 * (tangent + arc);
}

struct Worked {
  double r, d, s, perimeter;
};
// Worked outside the project by summing a fine polyline of the outline; mm.
constexpr Worked worked[] = {
    {14, 9, 38, 139.421}, {20, 9, 60, 203.759}, {9, 7, 30, 102.025}, {90, 14, 400, 1125.099}};

TEST(EyePerimeter, GivesTheWorkedValues) {
  for (const auto& [r, d, s, perimeter] : worked) {
    const auto result = eye_perimeter(mm(r), mm(d), mm(s));
    ASSERT_TRUE(result);
    EXPECT_NEAR(result->millimetres(), perimeter, 0.0006) << r << " " << d << " " << s;
  }
}

TEST(EyePerimeter, EqualsAFinePolyline) {
  for (const auto& [r, d, s, perimeter] : worked)
    EXPECT_NEAR(eye_perimeter(mm(r), mm(d), mm(s))->millimetres(), polyline_mm(r, d, s), 1e-6);
}

// 139.421 - (14 + 38) = 87.421
TEST(EyePerimeter, AllowanceIsThePerimeterLessTheWayToTheThroat) {
  EXPECT_NEAR(eye_allowance_from_geometry(mm(14), mm(9), mm(38))->millimetres(), 87.421, 0.0006);
}

TEST(EyePerimeter, IsNothingWhenTheThroatLiesInTheSeat) {
  EXPECT_FALSE(eye_perimeter(mm(14), mm(9), mm(12)));
  EXPECT_FALSE(eye_perimeter(mm(14), mm(9), mm(0)));
  EXPECT_FALSE(eye_perimeter(mm(-1), mm(9), mm(38)));
  EXPECT_FALSE(eye_allowance_from_geometry(mm(14), mm(9), mm(12)));
}

// A rope without thickness round a pin without diameter goes to the throat's mirror image and back.
TEST(EyePerimeter, OfNothingIsThereAndBack) {
  EXPECT_NEAR(eye_perimeter(mm(0), mm(0), mm(50))->millimetres(), 100, 1e-9);
}

RC_GTEST_PROP(EyePerimeter, LiesBetweenTheStraightWayAndTheBox, ()) {
  const double r = *rc::gen::inRange(1, 200);
  const double d = *rc::gen::inRange(1, 40);
  const double s = r + d + *rc::gen::inRange(0, 1000);
  const double perimeter = eye_perimeter(mm(r), mm(d), mm(s))->millimetres();
  const double half_width = r + d / 2;
  // Twice from throat to crown at least; at most the box round it: from each leg out to the side, along it,
  // across.
  RC_ASSERT(perimeter > 2 * (s + half_width));
  RC_ASSERT(perimeter < 2 * r + 2 * (s + half_width) + 2 * half_width);
}

// The least of all throats, each summed as a polyline: of a mast of 180 mm, a thimble, and a seat thinner
// than its rope.
TEST(LeastEyeAllowance, IsTheLeastOfAllThroats) {
  for (const auto& [r, d] : {std::pair{90.0, 11.0}, {14.0, 9.0}, {2.0, 12.0}}) {
    const double nearest = std::sqrt((r + d / 2) * (r + d / 2) - d * d / 4) + 1e-6;
    double least = polyline_mm(r, d, nearest) - (r + nearest);
    for (double s = nearest; s < 2 * (r + d); s += (r + d) / 50)
      least = std::min(least, polyline_mm(r, d, s) - (r + s));
    EXPECT_NEAR(least_eye_allowance(mm(r), mm(d))->millimetres(), least, 0.02) << r << " " << d;
  }
  EXPECT_FALSE(least_eye_allowance(mm(-1), mm(11)));
}

RC_GTEST_PROP(LeastEyeAllowance, NoThroatFartherOffTakesLess, ()) {
  const double r = *rc::gen::inRange(1, 200);
  const double d = *rc::gen::inRange(1, 40);
  const double s = r + d / 2 + *rc::gen::inRange(1, 1000) / 10.0;
  RC_ASSERT(*eye_allowance_from_geometry(mm(r), mm(d), mm(s)) >=
            *least_eye_allowance(mm(r), mm(d)) - mm(1e-6));
}

} // namespace
} // namespace sheerpole::eye_perimeter_test
