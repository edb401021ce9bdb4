#include "units/shortest_digits.hpp"

#include "units/format_length.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <bit>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <limits>
#include <string>

namespace sheerpole::shortest_digits_test {
namespace {

// Decimals that lie so near to the middle between two doubles that a reader with too few digits takes the
// wrong one: V. Paxson, A Program for Testing IEEE Decimal-Binary Conversion, 1991, tables 3 and 4, from
// memory. What each becomes is told by two readers of others, below.
constexpr std::array hard{
    "5e125", "69e267", "999e-26", "7861e-34", "75569e-254", "928609e-261", "9210917e80", "84863171e114",
    "653777767e273", "5232604057e-298", "27235667517e-109", "653532977297e-123", "3142213164987e-294",
    "46202199371337e-72", "231010996856685e-73", "9324754620109615e212", "78459735791271921e49",
    "272104041512242479e200", "6802601037806061975e198", "20505426358836677347e-221",
    "836168422905420598437e-234", "4891559871276714924261e222", "9e-265", "85e-37", "623e100", "3571e263",
    "81661e153", "920657e-23", "4603285e-24", "87575437e-309", "245540327e122", "6138508175e120",
    "83356057653e193", "619534293513e124", "2335141086879e218", "36167929443327e-159",
    "609610927149051e-255", "3743626360493413e-165", "94080055902682397e-242", "899810892172646163e283",
    "7120190517612959703e120", "25188282901709339043e-252", "308984926168550152811e-52",
    "6372891218502368041059e64",
    // The least normal double and its neighbours.
    "2.2250738585072011e-308", "2.2250738585072012e-308", "2.2250738585072014e-308", "4.9e-324",
    "1.7976931348623157e308"};

double by_standard_library(const std::string& text) {
  double value = 0.0;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

std::string as_standard_library_writes(double value, std::chars_format format) {
  std::array<char, 400> buffer;
  return {buffer.data(), std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format).ptr};
}

/// The digits again as one number.
std::string joined(const DecimalDigits& decimal) {
  return (decimal.negative ? "-0." : "0.") + decimal.digits + "e" + std::to_string(decimal.point);
}

TEST(ShortestDigits, AreReadAsTwoOtherReadersDo) {
  for (const std::string text : hard) {
    const ReadDigits read = read_digits(text);
    EXPECT_EQ(read.fault, DigitsFault::none) << text;
    EXPECT_EQ(read.value, by_standard_library(text)) << text;
    EXPECT_EQ(read.value, std::strtod(text.c_str(), nullptr)) << text;
  }
}

TEST(ShortestDigits, GoToTheEvenOneOfTwoThatAreAsNear) {
  // Above 2^53 every second whole number is a double (IEEE 754-2019, 4.3.1).
  EXPECT_EQ(read_digits("9007199254740993").value, std::ldexp(1.0, 53));
  EXPECT_EQ(read_digits("9007199254740995").value, std::ldexp(1.0, 53) + 4.0);
  EXPECT_EQ(read_digits("9007199254740993.0000000000000000000000000001").value, std::ldexp(1.0, 53) + 2.0);
}

TEST(ShortestDigits, SayWhatIsNoNumber) {
  for (const char* text :
       {"", "-", "+1", "inf", "nan", "-infinity", "1e", "1 ", " 1", "1,5", "0x10", "1.5.2", "e5"})
    EXPECT_EQ(read_digits(text).fault, DigitsFault::malformed) << text;
  EXPECT_EQ(read_digits("1e309").fault, DigitsFault::too_large);
  EXPECT_EQ(read_digits("-1e309").fault, DigitsFault::too_large);
  EXPECT_EQ(read_digits("1e-400").fault, DigitsFault::too_small);
  for (const char* text : {"0", "-0.00", "0e-400", "0e400"}) {
    EXPECT_EQ(read_digits(text).fault, DigitsFault::none) << text;
    EXPECT_EQ(read_digits(text).value, 0.0) << text;
  }
}

TEST(ShortestDigits, AreThoseOfTheNearestDecimal) {
  const auto digits = [](double value) { return joined(shortest_decimal(value)); };
  EXPECT_EQ(digits(2.675), "0.2675e1");
  EXPECT_EQ(digits(0.1 + 0.2), "0.30000000000000004e0");
  EXPECT_EQ(digits(1200.0), "0.12e4");
  EXPECT_EQ(digits(-1e23), "-0.1e24");
  EXPECT_EQ(digits(0.0), "0.0e1");
  EXPECT_EQ(digits(std::numeric_limits<double>::denorm_min()), "0.5e-323");
  EXPECT_EQ(digits(std::numeric_limits<double>::max()), "0.17976931348623157e309");
}

RC_GTEST_PROP(ShortestDigits, ReadBackAsTheSameDoubleAndAsTheStandardLibraryWrites, (std::uint64_t bits)) {
  const auto value = std::bit_cast<double>(bits);
  RC_PRE(std::isfinite(value));
  const DecimalDigits decimal = shortest_decimal(value);
  RC_ASSERT(read_digits(joined(decimal)).value == value);
  std::string text = decimal.negative ? "-" : "";
  text += decimal.digits.substr(0, 1);
  if (decimal.digits.size() > 1)
    text += "." + decimal.digits.substr(1);
  const std::string theirs = as_standard_library_writes(value, std::chars_format::scientific);
  RC_ASSERT(text == theirs.substr(0, theirs.find('e')));
}

RC_GTEST_PROP(ShortestDigits, MakeTheNumbersThatTheStandardLibraryWrites,
              (std::int32_t count, std::uint8_t scale)) {
  const double value = count * std::pow(10.0, scale % 40 - 20);
  RC_PRE(value != 0.0);
  const bool plain = std::abs(value) >= 1e-6 && std::abs(value) < 1e15;
  RC_ASSERT(
      format_number(value) ==
      as_standard_library_writes(value, plain ? std::chars_format::fixed : std::chars_format::scientific));
}

} // namespace
} // namespace sheerpole::shortest_digits_test
