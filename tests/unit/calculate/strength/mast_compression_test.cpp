#include "calculate/strength/mast_compression.hpp"

#include "calculate/strength/shroud_load_share.hpp"

#include <gtest/gtest.h>

namespace sheerpole::mast_compression_test {
namespace {

// By hand: 1.5 x 23.5 / 1.43 = 24.65 kN on the shrouds, x 1.85 = 45.60 kN in the mast. This checks the
// arithmetic; the factor of 1.85 is from memory.
TEST(MastCompression, IsTheShroudLoadTimesAFactor) {
  const Force shrouds = *transverse_shroud_load(23'500, Length::metres(1.43), 1.5);
  EXPECT_NEAR(mast_compression(shrouds, 1.85)->kilonewtons(), 45.60, 0.005);
  EXPECT_NEAR(mast_compression(shrouds, 1.0)->kilonewtons(), 24.65, 0.005);
}

TEST(MastCompression, IsNothingOutOfRange) {
  EXPECT_FALSE(mast_compression(Force(), 1.85));
  EXPECT_FALSE(mast_compression(Force::newtons(1), 0));
}

} // namespace
} // namespace sheerpole::mast_compression_test
