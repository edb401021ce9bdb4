#include "calculate/strength/pin_strength.hpp"

#include <gtest/gtest.h>

#include <limits>

namespace sheerpole::pin_strength_test {
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
} // namespace sheerpole::pin_strength_test
