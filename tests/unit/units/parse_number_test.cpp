#include "units/parse_quantity.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sheerpole::parse_number_test {
namespace {

using Kind = QuantityError::Kind;

TEST(ParseNumber, ReadsEverySpelling) {
  EXPECT_EQ(parse_number("12").value(), 12.0);
  EXPECT_EQ(parse_number("0.5").value(), 0.5);
  EXPECT_EQ(parse_number("11_642").value(), 11642.0);
  EXPECT_EQ(parse_number("3/8").value(), 0.375);
  EXPECT_EQ(parse_number("7 3/8").value(), 7.375);
  EXPECT_EQ(parse_number("7-3/8").value(), 7.375);
  EXPECT_EQ(parse_number("24e-6").value(), 24e-6);
  EXPECT_EQ(parse_number("-0.25").value(), -0.25);
  EXPECT_EQ(parse_number("7\u00BD").value(), 7.5);
  EXPECT_EQ(parse_number("1_000.000_5").value(), 1000.0005);
  EXPECT_EQ(parse_number("1e12").value(), 1e12);
  EXPECT_FALSE(std::signbit(parse_number("-0").value()));
}

TEST(ParseNumber, RefusesTheRest) {
  const auto kind = [](std::string_view text) {
    const auto number = parse_number(text);
    EXPECT_FALSE(number.ok()) << text;
    return number.ok() ? Kind::empty : number.error().kind;
  };
  EXPECT_EQ(kind(""), Kind::empty);
  EXPECT_EQ(kind("12 mm"), Kind::malformed);
  EXPECT_EQ(kind("a"), Kind::malformed);
  EXPECT_EQ(kind("11,815"), Kind::decimal_comma);
  EXPECT_EQ(kind("11 642"), Kind::spaced_number);
  for (const char* odd : {"11_64", "1_2_0_0_0", "1164_2", "0_5", "1_000.00_5", "1.0000_5"})
    EXPECT_EQ(kind(odd), Kind::odd_groups) << odd;
  EXPECT_EQ(parse_number("11_64").error().suggestions, (std::vector<std::string>{"1164", "11.64"}));
  EXPECT_EQ(kind("3/0"), Kind::zero_denominator);
  EXPECT_EQ(kind("7 9/8"), Kind::improper_mixed);
  EXPECT_EQ(kind("1e13"), Kind::too_large);
  EXPECT_EQ(kind("1e-400"), Kind::malformed);
  EXPECT_EQ(kind("1__2"), Kind::malformed);
  EXPECT_EQ(kind("nan"), Kind::malformed);
  EXPECT_EQ(kind("infinity"), Kind::malformed);
}

TEST(ParseNumber, SuggestsNumbers) {
  EXPECT_EQ(parse_number("11,815").error().suggestions, (std::vector<std::string>{"11.815", "11_815"}));
  EXPECT_EQ(parse_number("11 642").error().suggestions, (std::vector<std::string>{"11_642"}));
  EXPECT_EQ(parse_number(".5").error().suggestions, (std::vector<std::string>{"0.5"}));
  EXPECT_EQ(parse_number("5.").error().suggestions, (std::vector<std::string>{"5"}));
  EXPECT_EQ(parse_number("7 9/8").error().suggestions, (std::vector<std::string>{"8 1/8"}));
}

} // namespace
} // namespace sheerpole::parse_number_test
