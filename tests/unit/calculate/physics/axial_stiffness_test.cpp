#include "calculate/physics/axial_stiffness.hpp"

#include "calculate/physics/elastic_stretch.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <limits>
#include <vector>

namespace sheerpole::axial_stiffness_test {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double square_millimetre = 1e-6;

Length mm(double value) {
  return Length::millimetres(value);
}

// Plane geometry: 19 wires of d/5 in a circle of d; 6 mm is 0.76 x 28.274 = 21.49 mm2, 8 mm 38.20 mm2.
TEST(AxialStiffness, MetalOfOneByNineteen) {
  EXPECT_NEAR(fill_of_one_by_nineteen, 19 * std::pow(1.0 / 5, 2), 1e-15);
  EXPECT_NEAR(*metallic_area(mm(6), fill_of_one_by_nineteen) / square_millimetre, 21.49, 0.005);
  EXPECT_NEAR(*metallic_area(mm(8), fill_of_one_by_nineteen) / square_millimetre, 38.20, 0.005);
  EXPECT_NEAR(*gross_area(mm(8)) / square_millimetre, 50.27, 0.005);
}

// 107.5 GPa on the gross area is common practice, no source; 107.5 / 0.76 = 141.4 by hand. The stiffness is
// the same whichever pair is used.
TEST(AxialStiffness, AModulusBelongsToItsArea) {
  const double metallic = *modulus_on_metallic_area(107.5e9, fill_of_one_by_nineteen);
  EXPECT_NEAR(metallic / 1e9, 141.4, 0.05);
  const double of_gross = axial_stiffness(107.5e9, *gross_area(mm(6)))->newtons();
  EXPECT_NEAR(axial_stiffness(metallic, *metallic_area(mm(6), fill_of_one_by_nineteen))->newtons(),
              of_gross, 1e-6);
  EXPECT_NEAR(of_gross / 1e6, 3.039, 0.0005); // 107.5 kN/mm2 x 28.274 mm2, by hand
  // Solid steel of 193 GPa on the gross area is wrong by nearly two: 193 / 107.5 = 1.795.
  EXPECT_NEAR(axial_stiffness(193e9, *gross_area(mm(6)))->newtons() / of_gross, 1.795, 0.001);
}

// Table of inch sizes at 130 GPa on the metallic area, worked by hand: 1/4 in 3129 kN, 5/16 in 4889 kN, 3/8
// in 7040 kN.
TEST(AxialStiffness, OfInchSizes) {
  const auto of = [](double inches) {
    return axial_stiffness(130e9, *metallic_area(Length::inches(inches), fill_of_one_by_nineteen))
        ->kilonewtons();
  };
  EXPECT_NEAR(of(1.0 / 4), 3129, 0.5);
  EXPECT_NEAR(of(5.0 / 16), 4889, 0.5);
  EXPECT_NEAR(of(3.0 / 8), 7040, 0.5);
}

// By hand: 10 m of 2 MN and 2 m of 1 MN give 5e-6 + 2e-6 m/N; 12 / 7e-6 = 1.714286 MN.
TEST(AxialStiffness, OfTwoPiecesInSeries) {
  const std::array pieces{StretchedPiece{Length::metres(10), Force::newtons(2e6)},
                          StretchedPiece{Length::metres(2), Force::newtons(1e6)}};
  EXPECT_NEAR(axial_stiffness_in_series(pieces)->newtons(), 12e6 / 7, 1e-3);
}

TEST(AxialStiffness, IsNothingOutOfRange) {
  EXPECT_FALSE(gross_area(mm(-1)));
  EXPECT_FALSE(metallic_area(mm(6), 0));
  EXPECT_FALSE(metallic_area(mm(6), 1.01));
  EXPECT_FALSE(metallic_area(mm(6), nan));
  EXPECT_FALSE(modulus_on_metallic_area(0, 0.76));
  EXPECT_FALSE(modulus_on_metallic_area(1e11, nan));
  EXPECT_FALSE(axial_stiffness(0, 1e-6));
  EXPECT_FALSE(axial_stiffness(1e11, nan));
  EXPECT_FALSE(axial_stiffness(1e300, 1e300));
  EXPECT_FALSE(axial_stiffness_in_series({}));
  const std::array no_stiffness{StretchedPiece{mm(10), Force::newtons(1)}, StretchedPiece{mm(10), Force()}};
  EXPECT_FALSE(axial_stiffness_in_series(no_stiffness));
  const std::array no_length{StretchedPiece{mm(0), Force::newtons(1)}};
  EXPECT_FALSE(axial_stiffness_in_series(no_length));
}

// What the pieces stretch one by one is what the even line stretches.
RC_GTEST_PROP(AxialStiffness, TheStretchesOfPiecesAddUp, ()) {
  const auto sizes = *rc::gen::nonEmpty(rc::gen::container<std::vector<std::pair<int, int>>>(
      rc::gen::pair(rc::gen::inRange(1, 20000), rc::gen::inRange(1, 10000))));
  const Force tension = Force::newtons(5000);
  std::vector<StretchedPiece> pieces;
  Length length;
  Length stretch;
  for (const auto& [millimetres, kilonewtons] : sizes) {
    pieces.push_back({mm(millimetres), Force::kilonewtons(kilonewtons)});
    length += pieces.back().length;
    stretch += *elastic_stretch(pieces.back().length, tension, pieces.back().axial_stiffness);
  }
  const Length whole = *elastic_stretch(length, tension, *axial_stiffness_in_series(pieces));
  RC_ASSERT(std::abs(whole / stretch - 1.0) < 1e-12);
}

} // namespace
} // namespace sheerpole::axial_stiffness_test
