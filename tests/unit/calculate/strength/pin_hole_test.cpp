#include "calculate/strength/pin_hole.hpp"

#include <gtest/gtest.h>

namespace sheerpole::pin_hole_test {
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
} // namespace sheerpole::pin_hole_test
