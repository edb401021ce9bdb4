#include "calculate/physics/fid_length.hpp"

#include <gtest/gtest.h>

#include <limits>

namespace sheerpole::fid_length_test {
namespace {

Length mm(double value) {
  return Length::millimetres(value);
}
Length inches(double value) {
  return Length::inches(value);
}

// A public table of fid sizes: 4 in rope has a fid of 84 in, 12 mm rope one of 252 mm; 21 d.
TEST(FidLength, IsTwentyOneDiameters) {
  EXPECT_NEAR(fid_length(inches(4))->inches(), 84, 1e-9);
  EXPECT_NEAR(fid_length(mm(12))->millimetres(), 252, 1e-9);
  EXPECT_NEAR(fid_length(mm(10), 22)->millimetres(), 220, 1e-9);
}

// The same table: the short section of the tubular fid for 1/4 in, 5 1/2 in long, is 2 1/16 in; 0.30 for
// 9/16 to 3/4 in and 0.25 for 7/8 in and more.
TEST(FidLength, ShortSection) {
  EXPECT_NEAR(5.5 * *short_section_share(inches(1.0 / 4)), 2.0625, 1e-12);
  EXPECT_EQ(*short_section_share(inches(1.0 / 2)), 0.375);
  EXPECT_EQ(*short_section_share(inches(9.0 / 16)), 0.30);
  EXPECT_EQ(*short_section_share(inches(3.0 / 4)), 0.30);
  EXPECT_EQ(*short_section_share(inches(7.0 / 8)), 0.25);
  EXPECT_EQ(*short_section_share(inches(4)), 0.25);
  // Metric sizes go with their neighbours of the table: 13 mm with 1/2 in, 14 with 9/16, 20 with 3/4, 22
  // with 7/8.
  EXPECT_EQ(*short_section_share(mm(13)), 0.375);
  EXPECT_EQ(*short_section_share(mm(14)), 0.30);
  EXPECT_EQ(*short_section_share(mm(20)), 0.30);
  EXPECT_EQ(*short_section_share(mm(22)), 0.25);
  EXPECT_EQ(*short_section_share(mm(6)), 0.375);
  EXPECT_FALSE(short_section_share(mm(5)));
}

// Common practice, no source: in 10 mm rope the tail is 420 mm and comes out 630 mm from the mark.
TEST(FidLength, MarksOfThePlainSplice) {
  const PlainSpliceMarks marks = *plain_splice_marks(mm(10));
  EXPECT_NEAR(marks.tail.millimetres(), 420, 1e-9);
  EXPECT_NEAR(marks.exit.millimetres(), 630, 1e-9);
}

// By hand: 72 / 21 = 3.43; 3 1/2 fids are 73.5 d; 72 d of 6, 8 and 10 mm are 432, 576 and 720 mm.
TEST(FidLength, LengthsInFids) {
  EXPECT_NEAR(*length_in_fids(mm(72 * 9), mm(9)), 3.43, 0.005);
  EXPECT_NEAR(*length_in_fids(mm(588), mm(8)), 3.5, 1e-9);
  EXPECT_NEAR(*length_in_fids(mm(432), mm(6)), *length_in_fids(mm(720), mm(10)), 1e-12);
}

TEST(FidLength, IsNothingOutOfRange) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(fid_length(mm(0)));
  EXPECT_FALSE(fid_length(mm(10), 0));
  EXPECT_FALSE(fid_length(mm(10), nan));
  EXPECT_FALSE(length_in_fids(mm(100), mm(-1)));
  EXPECT_FALSE(short_section_share(mm(0)));
  EXPECT_FALSE(plain_splice_marks(mm(0)));
  EXPECT_FALSE(plain_splice_marks(mm(10), nan));
}

} // namespace
} // namespace sheerpole::fid_length_test
