#include "calculate/strength/fitting_strength.hpp"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>
#include <rapidcheck/gtest.h>

namespace sheerpole::fitting_strength_test {
namespace pin_strength_tests {
namespace {

// By hand: 12 mm at 0.6 x 500 MPa, 2 x 113.10 mm2 x 300 = 67.9 kN; 3/8 in at 0.6 x 85 ksi, 2 x 0.110447 in2
// x 51 000 psi = 11 266 lbf or 50.1 kN. The 0.6 is common practice, no source.
TEST(PinStrength, DoubleShear) {
  EXPECT_NEAR(pin_shear_strength(Length::millimetres(12), 0.6 * 500e6)->kilonewtons(), 67.9, 0.05);
  const double pound = 4.4482216152605; // N, exact
  const double psi = pound / (0.0254 * 0.0254);
  const Force inch = *pin_shear_strength(Length::inches(3.0 / 8.0), 0.6 * 85'000 * psi);
  EXPECT_NEAR(inch.newtons() / pound, 11'266, 0.5);
  EXPECT_NEAR(inch.kilonewtons(), 50.1, 0.05);
  EXPECT_NEAR(inch.kilonewtons() / 20.9, 2.40, 0.005); // over the break load of a 3/16 in wire
}

TEST(PinStrength, OnePlaneIsHalfOfTwo) {
  EXPECT_NEAR(*pin_shear_strength(Length::millimetres(12), 300e6, 1) /
                  *pin_shear_strength(Length::millimetres(12), 300e6),
              0.5, 1e-12);
}

// By hand: 10 mm x 8 mm x 500 MPa = 40 kN.
TEST(PinStrength, Bearing) {
  const Length pin = Length::millimetres(10);
  const Length plate = Length::millimetres(8);
  EXPECT_NEAR(bearing_strength(pin, plate, 500e6, 1)->kilonewtons(), 40, 1e-9);
  EXPECT_NEAR(bearing_strength(pin, plate, 200e6, 1.5)->kilonewtons(), 24, 1e-9);
}

TEST(PinStrength, IsNothingOutOfRange) {
  const Length pin = Length::millimetres(10);
  EXPECT_FALSE(pin_shear_strength(Length(), 1));
  EXPECT_FALSE(pin_shear_strength(pin, 0));
  EXPECT_FALSE(pin_shear_strength(pin, std::numeric_limits<double>::infinity()));
  EXPECT_FALSE(pin_shear_strength(pin, 1, 0));
  EXPECT_FALSE(bearing_strength(pin, Length(), 1, 1));
  EXPECT_FALSE(bearing_strength(Length(), pin, 1, 1));
  EXPECT_FALSE(bearing_strength(pin, pin, std::numeric_limits<double>::quiet_NaN(), 1));
  EXPECT_FALSE(bearing_strength(pin, pin, 1, 0));
}

} // namespace
} // namespace pin_strength_tests

namespace pin_bending_tests {
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
} // namespace pin_bending_tests

namespace pin_hole_tests {
namespace {

// By hand: 18 mm from the centre of a 12 mm hole is 1.5 diameters, of which one is plate.
TEST(PinHole, EdgeDistance) {
  const Length edge = Length::millimetres(18);
  const Length hole = Length::millimetres(12);
  EXPECT_NEAR(*edge_distance_ratio(edge, hole), 1.5, 1e-12);
  EXPECT_NEAR(*ligament_ratio(edge, hole), 1.0, 1e-12);
  EXPECT_LT(*ligament_ratio(Length::millimetres(5), hole), 0);
}

// By hand: a 16.3 mm hole for a 5/8 in pin, 15.875 mm; a 12 mm pin in a 13 mm hole; a 1/2 in pin does not
// enter a 12.5 mm hole.
TEST(PinHole, Clearance) {
  EXPECT_NEAR(hole_clearance(Length::millimetres(16.3), Length::inches(0.625))->clearance.millimetres(),
              0.425, 1e-9);
  EXPECT_NEAR(hole_clearance(Length::millimetres(13), Length::millimetres(12))->of_pin, 1.0 / 12, 1e-12);
  EXPECT_LT(hole_clearance(Length::millimetres(12.5), Length::inches(0.5))->clearance, Length());
}

TEST(PinHole, IsNothingOutOfRange) {
  const Length millimetre = Length::millimetres(1);
  EXPECT_FALSE(edge_distance_ratio(Length(), millimetre));
  EXPECT_FALSE(edge_distance_ratio(millimetre, Length()));
  EXPECT_FALSE(ligament_ratio(millimetre, -millimetre));
  EXPECT_FALSE(hole_clearance(Length(), millimetre));
  EXPECT_FALSE(hole_clearance(millimetre, Length()));
}

} // namespace
} // namespace pin_hole_tests

namespace thread_strength_tests {
namespace {

double inch_area(double inches, double threads_per_inch) {
  return *thread_stress_area(Length::inches(inches), Length::inches(1 / threads_per_inch),
                             inch_stress_diameter_pitches) *
         1e6;
}

double metric_area(double diameter, double pitch) {
  return *thread_stress_area(Length::millimetres(diameter), Length::millimetres(pitch),
                             metric_stress_diameter_pitches) *
         1e6;
}

// Table of stress areas, ASME B1.1, from memory: 0.1600 in2 for 1/2-20. Others in mm2 as such tables print
// them.
TEST(ThreadStrength, InchStressAreas) {
  EXPECT_NEAR(inch_area(0.5, 20) / 645.16, 0.1600, 0.00005);
  struct Row {
    double inches, threads_per_inch, area;
  };
  for (const auto& [inches, threads_per_inch, area] :
       {Row{0.25, 28, 23.5}, Row{0.3125, 24, 37.5}, Row{0.375, 24, 56.7}, Row{0.4375, 20, 76.6},
        Row{0.5, 20, 103.2}, Row{0.5625, 18, 131.0}, Row{0.625, 18, 165.1}, Row{0.75, 16, 240.6},
        Row{0.875, 14, 328.7}, Row{1.0, 12, 427.8}})
    EXPECT_NEAR(inch_area(inches, threads_per_inch), area, 0.1) << inches;
}

// Table of stress areas, ISO 898-1, from memory, and a public chart of metric threads.
TEST(ThreadStrength, MetricStressAreas) {
  struct Row {
    double diameter, pitch, area;
  };
  for (const auto& [diameter, pitch, area] :
       {Row{6, 1, 20.1}, Row{8, 1.25, 36.6}, Row{10, 1.5, 58.0}, Row{12, 1.75, 84.3}, Row{14, 2, 115},
        Row{16, 2, 157}, Row{18, 2.5, 192}, Row{20, 2.5, 245}, Row{22, 2.5, 303}, Row{24, 3, 353}})
    EXPECT_NEAR(metric_area(diameter, pitch), area, area < 100 ? 0.1 : 0.5) << diameter;
}

// By hand: 84.3 mm2 x 500 MPa = 42.15 kN.
TEST(ThreadStrength, IsAreaTimesStress) {
  EXPECT_NEAR(thread_strength(84.3e-6, 500e6)->kilonewtons(), 42.15, 1e-9);
}

TEST(ThreadStrength, IsNothingOutOfRange) {
  const Length millimetre = Length::millimetres(1);
  EXPECT_FALSE(thread_stress_area(Length(), millimetre, 0.9));
  EXPECT_FALSE(thread_stress_area(millimetre, Length(), 0.9));
  EXPECT_FALSE(thread_stress_area(millimetre, millimetre * 2, 0.9));
  EXPECT_FALSE(thread_stress_area(millimetre, millimetre, -0.1));
  EXPECT_FALSE(thread_strength(0, 1));
  EXPECT_FALSE(thread_strength(1, std::numeric_limits<double>::infinity()));
}

} // namespace
} // namespace thread_strength_tests

} // namespace sheerpole::fitting_strength_test
