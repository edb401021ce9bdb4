#include "calculate/strength/unstayed_spar.hpp"

#include <gtest/gtest.h>

#include <limits>

namespace sheerpole::unstayed_spar_test {
namespace {

// Public naval-architecture notes on unstayed spars (read, a complete example): Douglas fir of 13.4 GPa and
// 69 MPa, 150 mm outside and 90 mm inside, 3.705 m from the partners to the centre of the sail.
UnstayedSpar published() {
  return {.section = round_section(Length::millimetres(150), Length::millimetres(90)).value(),
          .arm = Length::metres(3.705),
          .modulus_pascals = 13.4e9,
          .rupture_pascals = 69e6};
}

TEST(UnstayedSpar, PublishedSection) {
  EXPECT_NEAR(published().section.second_moment_metres4 * 1e12, 21'629'865, 1);
  EXPECT_NEAR(published().section.section_modulus_metres3 * 1e9, 288'398, 1);
}

TEST(UnstayedSpar, PublishedBendingAtThirtyDegrees) {
  const auto bending = unstayed_spar_bending(published(), 4049);
  ASSERT_TRUE(bending);
  EXPECT_NEAR(bending->force.newtons(), 1093, 0.5);
  EXPECT_NEAR(bending->stress_pascals / 1e6, 14.04, 0.01);
  EXPECT_NEAR(bending->rupture_over_stress, 4.91, 0.01);
  EXPECT_NEAR(bending->deflection.millimetres(), 64, 0.5);
}

TEST(UnstayedSpar, PublishedBendingOnHerSide) {
  const auto bending = unstayed_spar_bending(published(), 7031);
  ASSERT_TRUE(bending);
  EXPECT_NEAR(bending->stress_pascals / 1e6, 24.38, 0.01);
  EXPECT_NEAR(bending->rupture_over_stress, 2.83, 0.01);
  EXPECT_NEAR(bending->deflection.millimetres(), 111, 0.5);
}

TEST(UnstayedSpar, IsNothingOutOfRange) {
  EXPECT_FALSE(round_section(Length::millimetres(90), Length::millimetres(90)));
  EXPECT_FALSE(round_section(Length::millimetres(90), Length::millimetres(-1)));
  EXPECT_FALSE(unstayed_spar_bending(published(), 0));
  EXPECT_FALSE(unstayed_spar_bending(published(), std::numeric_limits<double>::infinity()));
  UnstayedSpar wrong = published();
  wrong.arm = Length();
  EXPECT_FALSE(unstayed_spar_bending(wrong, 1));
  wrong = published();
  wrong.modulus_pascals = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(unstayed_spar_bending(wrong, 1));
  wrong = published();
  wrong.rupture_pascals = 0;
  EXPECT_FALSE(unstayed_spar_bending(wrong, 1));
  wrong = published();
  wrong.section = {};
  EXPECT_FALSE(unstayed_spar_bending(wrong, 1));
}

} // namespace
} // namespace sheerpole::unstayed_spar_test
