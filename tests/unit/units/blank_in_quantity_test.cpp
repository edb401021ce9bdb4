#include "units/quantity_text.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::blank_in_quantity_test {
namespace {

/// The text with a tilde for each blank at which no line may be broken.
std::string kept(std::string text) {
  const std::string from = text;
  for (std::size_t i = 0; i < from.size(); ++i)
    if (from[i] == ' ' && blank_in_quantity(from, i))
      text[i] = '~';
  return text;
}

TEST(BlankInQuantity, KeepsANumberWithItsUnitItsFractionAndItsX) {
  EXPECT_EQ(kept("set to 12.5 mm, or"), "set to 12.5~mm, or");
  EXPECT_EQ(kept("39 1/2\" past"), "39~1/2\" past");
  EXPECT_EQ(kept("X + 3' 6 1/8\" in all"), "X~+~3'~6~1/8\" in all");
  EXPECT_EQ(kept("body X - 609.7"), "body X~-~609.7");
  EXPECT_EQ(kept("X(cap-shroud.port) + 1.004 m: X taken"), "X(cap-shroud.port)~+~1.004~m: X taken");
  EXPECT_EQ(kept("1.2 % ± 0.4 % measured"), "1.2~%~±~0.4~% measured");
}

// Source: SI Brochure, 9th edition, 5.4.4: groups of three from the decimal marker by a thin space, "it is
// customary not to use a space to isolate a single digit" with four.
TEST(InThrees, PartsNumbersOfFiveFiguresAndMore) {
  EXPECT_EQ(in_threes("12817 mm"), "12\u202f817 mm");
  EXPECT_EQ(in_threes("-1234567.25"), "-1\u202f234\u202f567.25");
  EXPECT_EQ(in_threes("123456"), "123\u202f456");
  for (const char* kept_as_it_is : {"9999", "0", "", "-", "X + 12817", "9999.12345"})
    EXPECT_EQ(in_threes(kept_as_it_is), kept_as_it_is);
  EXPECT_EQ(without_thin_blanks(in_threes("-1234567.25 mm")), "-1234567.25 mm");
  EXPECT_EQ(kept(in_threes("12817 mm")), "12\u202f817~mm");
}

TEST(BlankInQuantity, LeavesWordsAlone) {
  EXPECT_EQ(kept("Pass 2: pin L first"), "Pass 2: pin L first");
  EXPECT_EQ(kept("4 knots - and more"), "4 knots - and more");
  EXPECT_EQ(kept(" 12 stays mm"), " 12 stays mm");
  EXPECT_EQ(kept(""), "");
}

} // namespace
} // namespace sheerpole::blank_in_quantity_test
