#include "calculate/strength/thread_strength.hpp"

#include <gtest/gtest.h>

#include <limits>

namespace sheerpole::thread_strength_test {
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
} // namespace sheerpole::thread_strength_test
