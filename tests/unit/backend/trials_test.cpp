#include "backend/paper_words.hpp"

#include <gtest/gtest.h>

namespace sheerpole::trials_test {
namespace {

TEST(Trials, AreGroupedByThrees) {
  EXPECT_EQ(grouped(0), "0");
  EXPECT_EQ(grouped(999), "999");
  EXPECT_EQ(grouped(1000), "1 000");
  EXPECT_EQ(grouped(1234567), "1 234 567");
}

TEST(Trials, AreCountedAndPromiseNothing) {
  EXPECT_EQ(trials_words(0.99812, 100'000), "99 812 of 100 000 draws");
  EXPECT_EQ(trials_words(1.0, 100'000), "all of 100 000 draws");
  EXPECT_EQ(trials_words(0.0, 20'000), "none of 20 000 draws");
}

// 99 999 of 100 000 would round to 100.0 %: it is not all of them.
TEST(Trials, AreNotAllWhenOneMisses) {
  EXPECT_EQ(trials_words(0.99999, 100'000), "99 999 of 100 000 draws");
}

TEST(Trials, SharesOfAVarianceAreNeverAHundredPerCent) {
  EXPECT_EQ(variance_words(0.864), "86.4 %");
  EXPECT_EQ(variance_words(1.0), "all of it");
  EXPECT_EQ(variance_words(0.9996), "all of it");
  EXPECT_EQ(variance_words(0.9994), "99.9 %");
  EXPECT_EQ(variance_words(0.0004), "under 0.1 %");
}

} // namespace
} // namespace sheerpole::trials_test
