#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace sheerpole {

// The only two ways from a double to its digits and back: the same on every platform, without a locale, and
// not those of the standard library, which some do not have.

/// A number as a person reads it: 0.`digits` times ten to the `point`.
struct DecimalDigits {
  bool negative = false;
  std::string digits;
  int point = 0;
};

/// The shortest decimal that reads back as the same double, and of those the nearest: 2.675, not
/// 2.67499999999999982236431605997495353221893310546875. A number that is not finite is a fault of the
/// compiler.
DecimalDigits shortest_decimal(double value);

/// Why digits are no number.
enum class DigitsFault : std::uint8_t { none, malformed, too_large, too_small };

struct ReadDigits {
  double value = 0.0;
  DigitsFault fault = DigitsFault::none;
};

/// The double nearest to all of the text, of two as near the even one (IEEE 754). The text is digits, with
/// a point, an exponent and a minus sign as wanted. Too small is what is not zero and would become it.
ReadDigits read_digits(std::string_view text);

} // namespace sheerpole
