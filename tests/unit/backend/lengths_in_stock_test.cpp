#include "backend/order/lengths_in_stock.hpp"

#include <gtest/gtest.h>

namespace sheerpole::lengths_in_stock_test {
namespace {

WholeLength wanted(const std::string& of, std::int64_t mm) {
  return {of, mm, tenths_up_mm(mm)};
}

TEST(LengthsInStock, TenthsAreRoundedUp) {
  EXPECT_EQ(tenths_up_mm(3600), 36);
  EXPECT_EQ(tenths_up_mm(3601), 37);
  EXPECT_EQ(tenths_up_mm(0), 0);
  EXPECT_EQ(tenths_up_mm(-5), 0);
}

// Two metres here and two there hold no piece of three metres.
TEST(LengthsInStock, AreNotAddedUp) {
  LengthsInStock stock;
  stock.add(2000, 2);
  const auto without = stock.take({wanted("stay", 3000)}, 0);
  ASSERT_EQ(without.size(), 1U);
  EXPECT_EQ(without[0].of, "stay");
  EXPECT_EQ(without[0].tenths, 30);
}

TEST(LengthsInStock, HoldAPieceThatEndsWithThemAndNotOneWithoutItsKerf) {
  LengthsInStock stock;
  stock.add(5003);
  EXPECT_TRUE(stock.take({wanted("one", 3000), wanted("two", 2000)}, 3).empty());
  LengthsInStock shorter;
  shorter.add(5002);
  const auto without = shorter.take({wanted("two", 2000), wanted("one", 3000)}, 3);
  ASSERT_EQ(without.size(), 1U); // the longest goes first
  EXPECT_EQ(without[0].of, "two");
}

// The piece of 2 m goes to the shorter length, so that the one of 2.5 m still finds a place behind it.
TEST(LengthsInStock, GiveTheShortestThatHoldsIt) {
  LengthsInStock stock;
  stock.add(5000);
  stock.add(3000);
  EXPECT_TRUE(stock.take({wanted("two", 2000)}, 0).empty());
  EXPECT_TRUE(stock.take({wanted("all", 5000)}, 0).empty());
}

TEST(LengthsInStock, OfWhichSeveralAreAlikeOneIsTakenAtATime) {
  LengthsInStock stock;
  stock.add(2000, 3);
  stock.add(0);
  const auto without =
      stock.take({wanted("a", 1500), wanted("b", 1500), wanted("c", 1500), wanted("d", 1500)}, 4);
  ASSERT_EQ(without.size(), 1U);
  EXPECT_EQ(without[0].of, "d");
  EXPECT_TRUE(stock.take({wanted("e", 496)}, 4).empty()); // 2000 - 1500 - 4
}

} // namespace
} // namespace sheerpole::lengths_in_stock_test
