#include "calculate/strength/forestay_break_load.hpp"

#include <gtest/gtest.h>

namespace sheerpole::forestay_break_load_test {
namespace {

// By hand: 15 x 23.5 kN m / (11.58 + 1.20) m = 27.58 kN; 15 x 30 000 / (13.0 + 1.2) = 31 690 N. This checks
// the arithmetic; the factor of 15 is from memory.
TEST(ForestayBreakLoad, IsTheMomentOverTheHeight) {
  EXPECT_NEAR(forestay_break_load(23'500, Length::metres(11.58), Length::metres(1.20), 15)->kilonewtons(),
              27.58, 0.005);
  EXPECT_NEAR(forestay_break_load(30'000, Length::metres(13.0), Length::metres(1.2), 15)->newtons(), 31'690,
              0.5);
}

// By hand: 12 x 66 kN m / (11.05 + 1.35) m.
TEST(ForestayBreakLoad, OfAnInnerStay) {
  EXPECT_NEAR(forestay_break_load(66'000, Length::metres(11.05), Length::metres(1.35), 12)->kilonewtons(),
              63.871, 0.0005);
}

TEST(ForestayBreakLoad, IsNothingOutOfRange) {
  EXPECT_FALSE(forestay_break_load(0, Length::metres(1), Length(), 15));
  EXPECT_FALSE(forestay_break_load(1, Length::metres(1), Length::metres(-1), 15));
  EXPECT_FALSE(forestay_break_load(1, Length::metres(1), Length(), 0));
}

} // namespace
} // namespace sheerpole::forestay_break_load_test
