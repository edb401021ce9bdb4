#include "calculate/strength/shroud_of_lying_mast.hpp"

#include "calculate/physics/physical_constants.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>

namespace sheerpole::shroud_of_lying_mast_test {
namespace {

// Common practice, no source, and by hand: a mast of 150 kg, shroud at 10 degrees: 150 / (2 sin 10) = 431.9
// kg.
TEST(ShroudOfLyingMast, WorkedCase) {
  const double kilogram = standard_gravity_metres_per_second_squared; // its weight in newtons
  const auto tension = shroud_of_lying_mast(Force::newtons(150 * kilogram), 0.5, 10 * degree);
  ASSERT_TRUE(tension);
  EXPECT_NEAR(tension->newtons() / kilogram, 431.9, 0.05);
}

TEST(ShroudOfLyingMast, IsNothingOutOfRange) {
  const Force newton = Force::newtons(1);
  EXPECT_FALSE(shroud_of_lying_mast(Force::newtons(-1), 0.5, 0.1));
  EXPECT_FALSE(shroud_of_lying_mast(newton, 1.5, 0.1));
  EXPECT_FALSE(shroud_of_lying_mast(newton, 0.5, 0));
  EXPECT_FALSE(shroud_of_lying_mast(newton, 0.5, 1.6));
}

} // namespace
} // namespace sheerpole::shroud_of_lying_mast_test
