#include "backend/printed_sums.hpp"

#include <gtest/gtest.h>

namespace sheerpole::printed_mark_test {
namespace {

BenchMark mark(bool unknown_aloft, double aloft, bool unknown_below, double below) {
  return {MarkKind::throat_on_tail,
          WhichEnd::upper,
          {unknown_aloft, Length::millimetres(aloft)},
          {unknown_below, Length::millimetres(below)}};
}

// A cut of 12997.68 that prints as the sum of its rows, 12997.6: 756.04 from aloft prints 756.0 and leaves
// 12241.6, where 12241.64 alone would print the same; from below 807.84 prints 807.8 and leaves 12189.8.
TEST(PrintedMark, AddsUpToThePrintedCut) {
  const Tenths cut{129976};
  const PrintedMark aloft = printed_mark(mark(false, 756.04, false, 12241.64), cut);
  EXPECT_EQ(aloft.from_upper.tenths.count, 7560);
  EXPECT_EQ(aloft.from_lower.tenths.count, 122416);
  const PrintedMark below = printed_mark(mark(false, 12189.84, false, 807.84), cut);
  EXPECT_EQ(below.from_lower.tenths.count, 8078);
  EXPECT_EQ(below.from_upper.tenths.count, 121898);
  const PrintedMark end = printed_mark(mark(false, 0.0, false, 12997.68), cut);
  EXPECT_EQ(end.from_lower.tenths, cut);
}

// X - 286.0: a throat 52 from aloft is X - 338.0 from below.
TEST(PrintedMark, KeepsX) {
  const PrintedMark aloft = printed_mark(mark(false, 52.0, true, -338.04), Tenths{-2860});
  EXPECT_FALSE(aloft.from_upper.unknown);
  EXPECT_EQ(aloft.from_upper.tenths.count, 520);
  EXPECT_TRUE(aloft.from_lower.unknown);
  EXPECT_EQ(aloft.from_lower.tenths.count, -3380);
  const PrintedMark below = printed_mark(mark(true, -348.04, false, 62.0), Tenths{-2860});
  EXPECT_TRUE(below.from_upper.unknown);
  EXPECT_EQ(below.from_upper.tenths.count, -3480);
  EXPECT_EQ(below.from_lower.tenths.count, 620);
}

} // namespace
} // namespace sheerpole::printed_mark_test
