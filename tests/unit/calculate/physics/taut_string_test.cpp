#include "calculate/physics/taut_string.hpp"

#include "calculate/physics/physical_constants.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace sheerpole::taut_string_test {
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
} // namespace sheerpole::taut_string_test
