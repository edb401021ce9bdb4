#include "units/format_length.hpp"
#include "units/write_fixed.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <clocale>
#include <cmath>
#include <cstdio>
#include <limits>
#include <string>
#include <string_view>

namespace sheerpole::rounding_test {
namespace {

// Expected texts by hand: half away from zero on the decimal that is written in the first column.
TEST(Rounding, HalfGoesAwayFromZeroOnTheDecimalValue) {
  EXPECT_EQ(format_fixed(0.5, 0), "1");
  EXPECT_EQ(format_fixed(1.5, 0), "2");
  EXPECT_EQ(format_fixed(2.5, 0), "3");
  EXPECT_EQ(format_fixed(-0.5, 0), "-1");
  EXPECT_EQ(format_fixed(-2.5, 0), "-3");
  EXPECT_EQ(format_fixed(0.49, 0), "0");
  EXPECT_EQ(format_fixed(2.675, 2), "2.68"); // 2.67499999999999982... in binary
  EXPECT_EQ(format_fixed(1.005, 2), "1.01"); // 1.00499999999999989...
  EXPECT_EQ(format_fixed(0.285, 2), "0.29");
  EXPECT_EQ(format_fixed(-2.675, 2), "-2.68");
  EXPECT_EQ(format_fixed(1.25, 1), "1.3");
  EXPECT_EQ(format_fixed(0.05, 1), "0.1");
  EXPECT_EQ(format_fixed(0.04, 1), "0.0");
  EXPECT_EQ(format_fixed(0.005, 1), "0.0");
}

// printf of the C library on both sides of the middle between two decimals, and on the decimal itself.
RC_GTEST_PROP(Rounding, IsThatOfTheCLibraryWhereNothingLiesInTheMiddle, (unsigned size)) {
  const int decimals = *rc::gen::inRange(0, 5);
  const double step = std::pow(10.0, -decimals);
  const double decimal = (*rc::gen::arbitrary<bool>() ? -1.0 : 1.0) * (size % 2'000'000) * step;
  for (const double share : {-0.499, -0.001, 0.0, 0.25, 0.499}) {
    const double value = decimal + share * step;
    std::array<char, 64> expected{};
    std::snprintf(expected.data(), expected.size(), "%.*f", decimals, value);
    std::string text = expected.data();
    if (text.find_first_not_of("-0.") == std::string::npos)
      std::erase(text, '-');
    RC_ASSERT(format_fixed(value, decimals) == text);
    std::array<char, most_fixed_signs> written{};
    if (const char* const end = write_fixed(written.data(), value, decimals))
      RC_ASSERT(std::string_view(written.data(), static_cast<std::size_t>(end - written.data())) == text);
  }
}

// The same for millimetres, which are written in another way where they lie close to a middle.
RC_GTEST_PROP(Rounding, OfMillimetresIsThatOfTheCLibraryWhereNothingLiesInTheMiddle, (unsigned size)) {
  const int decimals = *rc::gen::inRange(0, 5);
  const double step = std::pow(10.0, -decimals);
  const double decimal = (*rc::gen::arbitrary<bool>() ? -1.0 : 1.0) * (size % 20'000'000) * step;
  for (const double share : {-0.499, -0.001, 0.0, 0.25, 0.499}) {
    const double millimetres = decimal + share * step;
    std::array<char, 64> expected{};
    std::snprintf(expected.data(), expected.size(), "%.*f", decimals, millimetres);
    std::string text = expected.data();
    if (text.find_first_not_of("-0.") == std::string::npos)
      std::erase(text, '-');
    RC_ASSERT(format_millimetres(Length::metres(millimetres / 1000.0), decimals) == text);
  }
}

TEST(Rounding, CarriesThroughNines) {
  EXPECT_EQ(format_fixed(9.995, 2), "10.00");
  EXPECT_EQ(format_fixed(99.5, 0), "100");
  EXPECT_EQ(format_fixed(0.9999, 3), "1.000");
  EXPECT_EQ(format_fixed(0.96, 1), "1.0");
  EXPECT_EQ(format_fixed(999999.9999, 3), "1000000.000");
}

TEST(Rounding, NeverWritesMinusZero) {
  EXPECT_EQ(format_fixed(-0.0, 0), "0");
  EXPECT_EQ(format_fixed(-0.0, 2), "0.00");
  EXPECT_EQ(format_fixed(-0.4, 0), "0");
  EXPECT_EQ(format_fixed(-0.004, 2), "0.00");
  EXPECT_EQ(format_number(-0.0), "0");
  EXPECT_EQ(format_millimetres(Length::millimetres(-0.04), 1), "0.0");
  EXPECT_EQ(format_feet_inches(Length::inches(-0.01), 16), "0\"");
  EXPECT_EQ(format_inches(Length::inches(-0.01), 16), "0\"");
}

TEST(Rounding, WritesLargeAndSmallNumbersOut) {
  EXPECT_EQ(format_fixed(123456789.0, 0), "123456789");
  EXPECT_EQ(format_fixed(1e21, 0), "1000000000000000000000");
  EXPECT_EQ(format_fixed(1e21, 1), "1000000000000000000000.0");
  EXPECT_EQ(format_fixed(1e-9, 3), "0.000");
  EXPECT_EQ(format_fixed(1e-9, 9), "0.000000001");
  EXPECT_EQ(format_fixed(std::numeric_limits<double>::denorm_min(), 2), "0.00");
  EXPECT_EQ(format_fixed(120.0, 2), "120.00");
}

TEST(Rounding, Millimetres) {
  EXPECT_EQ(format_millimetres(Length::metres(11.642)), "11642");
  EXPECT_EQ(format_millimetres(Length::metres(-0.0045), 1), "-4.5");
  EXPECT_EQ(format_millimetres(Length::metres(11.6425)), "11643"); // 11642.5
  EXPECT_EQ(format_millimetres(Length::metres(-11.6425)), "-11643");
  EXPECT_EQ(format_millimetres(Length::metres(0.0005)), "1");
  EXPECT_EQ(format_millimetres(Length::metres(0.000499)), "0");
  EXPECT_EQ(format_millimetres(Length::inches(463.375)), "11770"); // 11769.725
  EXPECT_EQ(format_millimetres(Length::inches(463.375), 3), "11769.725");
  EXPECT_EQ(format_millimetres(Length::inches(463.375), 2), "11769.73"); // a half
  EXPECT_EQ(format_millimetres(Length::inches(1.0), 1), "25.4");
  EXPECT_EQ(format_millimetres(Length{}), "0");
}

TEST(Rounding, MillimetresOfASumAreNotDecidedByItsLastBit) {
  // Ten pieces of 1.16425 m are 11.6425 m, though the sum in binary is not.
  Length sum;
  for (int i = 0; i < 10; ++i)
    sum += Length::metres(1.16425);
  ASSERT_NE(sum.metres(), 11.6425);
  EXPECT_EQ(format_millimetres(sum), "11643");
}

TEST(Rounding, FeetAndInches) {
  EXPECT_EQ(format_feet_inches(Length::inches(463.375)), "38' 7 3/8\"");
  EXPECT_EQ(format_feet_inches(Length::inches(48.1875)), "4' 0 3/16\"");
  EXPECT_EQ(format_feet_inches(Length::inches(456.0)), "38' 0\"");
  EXPECT_EQ(format_feet_inches(Length::inches(7.375)), "7 3/8\"");
  EXPECT_EQ(format_feet_inches(Length::inches(0.375)), "3/8\"");
  EXPECT_EQ(format_feet_inches(Length{}), "0\"");
  EXPECT_EQ(format_feet_inches(Length::inches(-463.375)), "-38' 7 3/8\"");
  EXPECT_EQ(format_feet_inches(Length::inches(11.99)), "1' 0\""); // 11 15.84/16
  EXPECT_EQ(format_feet_inches(Length::inches(7.0 + 1.0 / 64.0), 64), "7 1/64\"");
  EXPECT_EQ(format_feet_inches(Length::inches(7.0 + 2.0 / 64.0), 64), "7 1/32\"");
  EXPECT_EQ(format_feet_inches(Length::inches(7.0 + 1.0 / 64.0), 32), "7 1/32\""); // half of a 32nd
  EXPECT_EQ(format_feet_inches(Length::metres(11.769725)), "38' 7 3/8\"");
}

TEST(Rounding, EveryHalfOfASixteenthGoesUp) {
  for (int thirty_seconds = 1; thirty_seconds < 40000; thirty_seconds += 2) {
    const std::string half = format_inches(Length::inches(thirty_seconds / 32.0), 16);
    const std::string up = format_inches(Length::inches((thirty_seconds + 1) / 32.0), 16);
    ASSERT_EQ(half, up) << thirty_seconds << "/32 in";
  }
}

TEST(Rounding, Inches) {
  EXPECT_EQ(format_inches(Length::inches(463.375)), "463 3/8\"");
  EXPECT_EQ(format_inches(Length::inches(0.5)), "1/2\"");
  EXPECT_EQ(format_inches(Length::inches(-0.5)), "-1/2\"");
  EXPECT_EQ(format_inches(Length::inches(12.0)), "12\"");
}

TEST(Rounding, ALengthBeyondCountingIsStillWritten) {
  EXPECT_EQ(format_inches(Length::metres(0.0254e20)), "100000000000000000000\"");
  EXPECT_EQ(format_feet_inches(Length::metres(-0.0254e20)), "-100000000000000000000\"");
}

TEST(Rounding, ShortestNumbers) {
  EXPECT_EQ(format_number(0.65), "0.65");
  EXPECT_EQ(format_number(11642.0), "11642");
  EXPECT_EQ(format_number(200000.0), "200000");
  EXPECT_EQ(format_number(0.1 + 0.2), "0.30000000000000004");
  EXPECT_EQ(format_number(-4.5), "-4.5");
  EXPECT_EQ(format_number(0.000016), "0.000016");
  EXPECT_EQ(format_number(1e-9), "1e-09");
  EXPECT_EQ(format_number(1e300), "1e+300");
}

TEST(Rounding, DecimalSignIsAPointInEveryLocale) {
  const char* before = std::setlocale(LC_NUMERIC, nullptr);
  const std::string kept = before ? before : "C";
  if (std::setlocale(LC_NUMERIC, "de_DE.UTF-8") == nullptr)
    GTEST_SKIP() << "no locale with a decimal comma is installed";
  EXPECT_EQ(format_fixed(1.5, 1), "1.5");
  EXPECT_EQ(format_number(1.5), "1.5");
  EXPECT_EQ(format_millimetres(Length::millimetres(1.5), 1), "1.5");
  std::setlocale(LC_NUMERIC, kept.c_str());
}

} // namespace
} // namespace sheerpole::rounding_test
