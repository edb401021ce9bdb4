#include "calculate/physics/thermal_growth.hpp"

#include "calculate/physics/axial_stiffness.hpp"
#include "calculate/physics/elastic_stretch.hpp"

#include <gtest/gtest.h>

#include <limits>

namespace sheerpole::thermal_growth_test {
namespace {

// 316 of EN 10088-1, aluminium and the axial value of HMPE fibre of handbooks, all from memory.
constexpr double stainless = 16.0e-6;
constexpr double hmpe = -12.0e-6;

Length metres(double value) {
  return Length::metres(value);
}
double growth_mm(double length, double expansion, double warming) {
  return thermal_growth(metres(length), expansion, warming)->millimetres();
}
double beyond_mm(double spar, double of_spar, double line, double of_line, double warming) {
  return spar_growth_beyond_line({metres(spar), of_spar}, {metres(line), of_line}, warming)->millimetres();
}

// By hand, a L dT.
TEST(ThermalGrowth, OfWireSparAndRope) {
  EXPECT_NEAR(growth_mm(10, stainless, 20), 3.20, 1e-9);
  EXPECT_NEAR(growth_mm(12, hmpe, 25), -3.60, 1e-9);
  EXPECT_NEAR(growth_mm(12, 23.4e-6, 25), 7.02, 1e-9);
  EXPECT_NEAR(growth_mm(15, 23.6e-6, 30), 10.62, 1e-9);
  EXPECT_NEAR(growth_mm(14.5, stainless, 30), 6.96, 1e-9);
  EXPECT_NEAR(growth_mm(14.5, hmpe, 30), -5.22, 1e-9);
}

// By hand: 12 m and 25 K with a spar of 23.4e-6; 12 m and 20 K with one of 24e-6.
TEST(ThermalGrowth, OfASparBeyondItsLine) {
  EXPECT_NEAR(beyond_mm(12, 23.4e-6, 12, stainless, 25), 2.22, 1e-9);
  EXPECT_NEAR(beyond_mm(12, 23.4e-6, 12, hmpe, 25), 10.62, 1e-9);
  EXPECT_NEAR(beyond_mm(12, 24e-6, 12, hmpe, 20), 8.64, 1e-9);
  EXPECT_NEAR(beyond_mm(12, 24e-6, 12, stainless, 20), 1.92, 1e-9);
  EXPECT_NEAR(beyond_mm(14.5, 23.6e-6, 14.5, hmpe, 30), 15.486, 1e-9);
  EXPECT_NEAR(beyond_mm(15, 23.6e-6, 14.5, stainless, 30), 10.62 - 6.96, 1e-9);
}

// By hand: 30 K between aluminium and 316 are a strain of 2.28e-4, on 6 mm 1x19 of 3.039 MN 693 N.
TEST(ThermalGrowth, TightensAWireOnARigidHull) {
  const Length growth = *spar_growth_beyond_line({metres(1), 23.6e-6}, {metres(1), stainless}, 30);
  EXPECT_NEAR(growth.metres(), 2.28e-4, 1e-12);
  const Force stiffness = *axial_stiffness(107.5e9, *gross_area(Length::millimetres(6)));
  EXPECT_NEAR(tension_from_stretch(metres(1), growth, stiffness)->newtons(), 693, 0.5);
}

TEST(ThermalGrowth, IsNothingOutOfRange) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(thermal_growth(metres(-1), stainless, 20));
  EXPECT_FALSE(thermal_growth(metres(1), nan, 20));
  EXPECT_FALSE(thermal_growth(metres(1), stainless, nan));
  EXPECT_FALSE(thermal_growth(metres(1), stainless, -1e5));
  EXPECT_FALSE(thermal_growth(metres(1), stainless, std::numeric_limits<double>::infinity()));
  EXPECT_FALSE(spar_growth_beyond_line({metres(-1), 23e-6}, {metres(1), stainless}, 20));
  EXPECT_FALSE(spar_growth_beyond_line({metres(1), 23e-6}, {metres(1), nan}, 20));
}

} // namespace
} // namespace sheerpole::thermal_growth_test
