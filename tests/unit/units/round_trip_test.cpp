#include "units/format_length.hpp"
#include "units/named_size.hpp"
#include "units/parse_quantity.hpp"
#include "units/thread.hpp"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <charconv>
#include <cmath>

namespace sheerpole::round_trip_test {
namespace {

/// Lengths of a rig and well beyond, to a tenth of a micrometre, of both signs.
Length any_length() {
  return Length::metres(
      static_cast<double>(*rc::gen::inRange<std::int64_t>(-2'000'000'000, 2'000'000'000)) * 1e-7);
}

Length read(const std::string& text) {
  const auto quantity = parse_quantity(text);
  if (!quantity.ok()) {
    RC_FAIL("refused what was written: " + text);
  }
  RC_ASSERT(quantity.value().dimension == dimension::length);
  return Length::from_si(quantity.value().si);
}

RC_GTEST_PROP(RoundTrip, FeetAndInchesComeBackWithinHalfAStep, ()) {
  const Length length = any_length();
  const int denominator = *rc::gen::element(16, 32, 64);
  const std::string text = format_feet_inches(length, denominator);
  const Length back = read(text);
  RC_ASSERT(std::abs((back - length).inches()) <= 0.5 / denominator + 1e-8);
  RC_ASSERT(format_feet_inches(back, denominator) == text);
}

RC_GTEST_PROP(RoundTrip, InchesComeBackWithinHalfAStep, ()) {
  const Length length = any_length();
  const int denominator = *rc::gen::element(16, 32, 64);
  const std::string text = format_inches(length, denominator);
  const Length back = read(text);
  RC_ASSERT(std::abs((back - length).inches()) <= 0.5 / denominator + 1e-8);
  RC_ASSERT(format_inches(back, denominator) == text);
}

RC_GTEST_PROP(RoundTrip, MillimetresComeBackWithinHalfAStep, ()) {
  const Length length = any_length();
  const int decimals = *rc::gen::inRange(0, 4);
  const std::string text = format_millimetres(length, decimals) + " mm";
  const Length back = read(text);
  RC_ASSERT(std::abs((back - length).millimetres()) <= 0.5 * std::pow(10.0, -decimals) + 1e-8);
  RC_ASSERT(format_millimetres(back, decimals) + " mm" == text);
}

RC_GTEST_PROP(RoundTrip, ShortestNumbersComeBackToTheLastBit, (double value)) {
  RC_PRE(std::isfinite(value));
  const std::string text = format_number(value);
  double back = 0.0;
  std::from_chars(text.data(), text.data() + text.size(), back);
  RC_ASSERT(back == value);
  if (std::abs(value) <= 1e12) {
    RC_ASSERT(parse_number(text).value() == value);
  }
}

RC_GTEST_PROP(RoundTrip, EveryFractionIsReadExactly, ()) {
  const int whole = *rc::gen::inRange(0, 2000);
  const int denominator = *rc::gen::element(2, 4, 8, 16, 32, 64);
  const int numerator = *rc::gen::inRange(1, denominator);
  const std::string fraction = std::to_string(numerator) + "/" + std::to_string(denominator);
  const std::string separator = *rc::gen::element<std::string>(" ", "-", "\u00A0", "\u202F", "  ");
  const double expected = whole + static_cast<double>(numerator) / denominator; // exact: powers of two
  RC_ASSERT(parse_number(std::to_string(whole) + separator + fraction).value() == expected);
  RC_ASSERT(read(std::to_string(whole) + separator + fraction + "\"") == Length::inches(expected));
}

/// What a file may hold where a quantity belongs: pieces of quantities, and bytes of no meaning at all.
std::string any_garbage() {
  const auto piece =
      rc::gen::oneOf(rc::gen::element<std::string>("1", "12", "0", "3/8", "-", "_", ".", ",", "/", " ", "'",
                                                   "\"", "''", "ft", "in", "mm", "m", "e", "e9", "d", "%",
                                                   "\u00A0", "\u2032", "\u2033", "\u2019", "\u00BD"),
                     rc::gen::container<std::string>(3, rc::gen::arbitrary<char>()));
  std::string text;
  for (const std::string& part : *rc::gen::container<std::vector<std::string>>(piece))
    text += part;
  return text;
}

RC_GTEST_PROP(RoundTrip, GarbageIsReadOrRefusedAndEverySuggestionIsAccepted, ()) {
  const std::string text = any_garbage();
  const auto quantity = parse_quantity(text);
  if (quantity.ok()) {
    RC_ASSERT(std::isfinite(quantity.value().si));
  } else {
    for (const std::string& suggestion : quantity.error().suggestions)
      RC_ASSERT(parse_quantity(suggestion).ok());
  }
  const auto number = parse_number(text);
  if (number.ok()) {
    RC_ASSERT(std::isfinite(number.value()));
  } else {
    for (const std::string& suggestion : number.error().suggestions)
      RC_ASSERT(parse_number(suggestion).ok());
  }
  const auto thread = parse_thread(text);
  if (thread.ok()) {
    RC_ASSERT(thread.value().pitch > Length{});
  }
  const auto size = parse_named_size(text);
  if (size.ok()) {
    RC_ASSERT(size.value().diameter > Length{});
  } else if (!size.error().empty()) {
    RC_ASSERT(parse_named_size(size.error()).ok());
  }
}

RC_GTEST_PROP(RoundTrip, FeetAreNeverLostFromTheSum, ()) {
  // 4'2-1/4" once came out as 9/4 in elsewhere: the feet must always be in the sum.
  const int feet = *rc::gen::inRange(1, 100);
  const int inches = *rc::gen::inRange(0, 12);
  const std::string mark =
      *rc::gen::element<std::string>("'", "ft", " ft ", "\u2032", "\u2019", "' ", "'-");
  const std::string fraction = *rc::gen::element<std::string>("", "-1/4", " 1/4", "\u00BC", ".25");
  const std::string close = *rc::gen::element<std::string>("\"", "in", " in", "\u2033", "''");
  const double expected = feet * 12.0 + inches + (fraction.empty() ? 0.0 : 0.25);
  RC_ASSERT(read(std::to_string(feet) + mark + std::to_string(inches) + fraction + close) ==
            Length::inches(expected));
}

} // namespace
} // namespace sheerpole::round_trip_test
