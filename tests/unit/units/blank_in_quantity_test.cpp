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

TEST(BlankInQuantity, LeavesWordsAlone) {
  EXPECT_EQ(kept("Pass 2: pin L first"), "Pass 2: pin L first");
  EXPECT_EQ(kept("4 knots - and more"), "4 knots - and more");
  EXPECT_EQ(kept(" 12 stays mm"), " 12 stays mm");
  EXPECT_EQ(kept(""), "");
}

} // namespace
} // namespace sheerpole::blank_in_quantity_test
