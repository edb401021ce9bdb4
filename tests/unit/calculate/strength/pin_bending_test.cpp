#include "calculate/strength/pin_bending.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerpole::pin_bending_test {
namespace {

PinStack stack(double cheek, double middle, double gap) {
  return {Length::millimetres(cheek), Length::millimetres(middle), Length::millimetres(gap)};
}

// Statics by hand: 10 kN, cheeks 4 mm, plate 8 mm, gaps 1 mm. Half the force acts 2 + 1 + 4 mm from the
// middle one way, half of the plate's 2 mm from it the other way: 5000 x (7 - 2) mm = 25 N m. Pin 10 mm: pi
// d^3 / 32 = 98.17 mm3, 254.6 MPa.
TEST(PinBending, ByHand) {
  EXPECT_NEAR(*pin_bending_moment(Force::kilonewtons(10), stack(4, 8, 1)), 25, 1e-9);
  EXPECT_NEAR(*pin_bending_stress(Force::kilonewtons(10), stack(4, 8, 1), Length::millimetres(10)) / 1e6,
              254.6, 0.05);
}

TEST(PinBending, StrengthIsTheForceOfThatStress) {
  const Length pin = Length::millimetres(12);
  const Force force = *pin_bending_strength(stack(4, 8, 1), pin, 250e6, 1);
  EXPECT_NEAR(*pin_bending_stress(force, stack(4, 8, 1), pin) / 250e6, 1, 1e-12);
  EXPECT_NEAR(*pin_bending_strength(stack(4, 8, 1), pin, 250e6, 1.5) / force, 1.5, 1e-12);
}

TEST(PinBending, IsNothingOutOfRange) {
  const Force newton = Force::newtons(1);
  const Length pin = Length::millimetres(10);
  EXPECT_FALSE(pin_bending_moment(newton, stack(0, 8, 1)));
  EXPECT_FALSE(pin_bending_moment(newton, stack(4, 0, 1)));
  EXPECT_FALSE(pin_bending_moment(newton, stack(4, 8, -1)));
  EXPECT_FALSE(pin_bending_moment(Force::newtons(-1), stack(4, 8, 1)));
  EXPECT_FALSE(pin_bending_stress(newton, stack(4, 8, 1), Length()));
  EXPECT_FALSE(pin_bending_strength(stack(4, 8, 1), pin, 0, 1));
  EXPECT_FALSE(pin_bending_strength(stack(4, 8, 1), pin, 1, std::nan("")));
  EXPECT_FALSE(pin_bending_strength(stack(4, 8, 1), Length(), 1, 1));
}

// Statics: the pin cut into thin slices, each plate's pressure even over its thickness, and the moment of
// all slices on one side of every cut; the largest is in the middle and is the formula.
RC_GTEST_PROP(PinBending, IsTheLargestMomentOfEvenPressures, ()) {
  const double a = *rc::gen::inRange(1, 20);
  const double b = *rc::gen::inRange(1, 20);
  const double c = *rc::gen::inRange(0, 5);
  const int slices_per_mm = 40;
  const double step = 1.0 / slices_per_mm;
  double shear = 0;
  double moment = 0;
  double largest = 0;
  const int count = static_cast<int>((2 * a + b + 2 * c) * slices_per_mm);
  for (int i = 0; i < count; ++i) {
    const double x = (i + 0.5) * step;
    const double from_middle = std::abs(x - (a + c + b / 2));
    double pressure = 0;
    if (from_middle < b / 2)
      pressure = -1 / b;
    else if (from_middle > b / 2 + c)
      pressure = 1 / (2 * a);
    moment += shear * step + pressure * step * step / 2;
    shear += pressure * step;
    largest = std::max(largest, moment);
  }
  const double formula = *pin_bending_moment(Force::newtons(1), stack(a, b, c)) * 1000;
  RC_ASSERT(std::abs(largest / formula - 1) < 1e-9);
}

} // namespace
} // namespace sheerpole::pin_bending_test
