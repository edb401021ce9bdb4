#include "units/format_length.hpp"

#include "base/internal_error.hpp"
#include "units/shortest_digits.hpp"
#include "units/write_fixed.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <numeric>
#include <optional>
#include <string_view>
#include <utility>

namespace sheerpole {

namespace {

/// Rounds half away from zero to this many digits behind the point.
void round_to(DecimalDigits& decimal, int decimals) {
  const int kept = decimal.point + decimals;
  if (kept >= static_cast<int>(decimal.digits.size()))
    return;
  const bool up = kept >= 0 && decimal.digits[static_cast<std::size_t>(kept)] >= '5';
  decimal.digits.resize(kept > 0 ? static_cast<std::size_t>(kept) : 0);
  if (!up)
    return;
  std::size_t at = decimal.digits.size();
  while (at > 0 && decimal.digits[at - 1] == '9')
    decimal.digits[--at] = '0';
  if (at > 0) {
    ++decimal.digits[at - 1];
  } else {
    decimal.digits.insert(decimal.digits.begin(), '1');
    ++decimal.point;
  }
}

/// Writes a rounded number with exactly this many decimals.
std::string write(const DecimalDigits& decimal, int decimals) {
  const auto digit = [&](int place) { // place 0 is the first behind the point of 0.digits
    return place >= 0 && place < static_cast<int>(decimal.digits.size())
               ? decimal.digits[static_cast<std::size_t>(place)]
               : '0';
  };
  const bool zero = decimal.digits.find_first_not_of('0') == std::string::npos;
  std::string text = decimal.negative && !zero ? "-" : "";
  if (zero || decimal.point <= 0)
    text += '0';
  for (int place = 0; place < decimal.point && !zero; ++place)
    text += digit(place);
  if (decimals > 0)
    text += '.';
  for (int place = 0; place < decimals; ++place)
    text += digit(decimal.point + place);
  return text;
}

/// "000", "001" … "999", and room behind them: three signs are read from any place in it.
constexpr std::array<char, 3002> three_digits = [] {
  std::array<char, 3002> digits{};
  for (std::size_t number = 0; number < 1000; ++number) {
    digits[3 * number] = static_cast<char>('0' + number / 100);
    digits[3 * number + 1] = static_cast<char>('0' + number / 10 % 10);
    digits[3 * number + 2] = static_cast<char>('0' + number % 10);
  }
  return digits;
}();

/// The last `count` of the three digits of a number below 1000. Three signs are written whatever the count,
/// since a copy of a length that is known is no call; what comes next is written over the rest.
char* write_last(char* at, std::uint32_t number, std::size_t count) {
  std::memcpy(at, three_digits.data() + 3 * static_cast<std::size_t>(number) + 3 - count, 3);
  return at + count;
}

/// Below 10^9.
char* write_whole(char* at, std::uint32_t number) {
  const auto own_digits = [](std::uint32_t below_thousand) {
    return std::size_t{1} + (below_thousand >= 10 ? 1U : 0U) + (below_thousand >= 100 ? 1U : 0U);
  };
  if (number < 1000)
    return write_last(at, number, own_digits(number));
  if (number < 1'000'000)
    return write_last(write_last(at, number / 1000, own_digits(number / 1000)), number % 1000, 3);
  at = write_last(at, number / 1'000'000, own_digits(number / 1'000'000));
  return write_last(write_last(at, number / 1000 % 1000, 3), number % 1000, 3);
}

/// The same as by the shortest decimal, and much faster, for nearly all numbers of a paper: those of a
/// usual size that do not lie close to the middle between two roundings. Null for any other; else where it
/// ends.
char* write_by_integers(char* at, double value, int decimals) {
  constexpr std::array scales{1.0, 10.0, 100.0, 1000.0};
  constexpr std::array<std::uint32_t, 4> parts_of_one{1, 10, 100, 1000};
  const auto places = static_cast<std::size_t>(decimals);
  if (places >= scales.size())
    return nullptr;
  const double parts = std::abs(value) * scales[places];
  // Below this a product is off by less than a ten-millionth.
  if (!(parts < 1e9 - 1.0))
    return nullptr;
  const auto whole = static_cast<std::uint32_t>(parts);
  const double rest = parts - whole;
  if (std::abs(rest - 0.5) < 1e-6)
    return nullptr;
  const std::uint32_t count = whole + (rest > 0.5 ? 1U : 0U);
  if (value < 0.0 && count != 0)
    *at++ = '-';
  if (places == 0)
    return write_whole(at, count);
  if (places == 3) { // as nearly all are, and then the divisions are by a number that is known
    at = write_whole(at, count / 1000);
    *at++ = '.';
    return write_last(at, count % 1000, 3);
  }
  at = write_whole(at, count / parts_of_one[places]);
  *at++ = '.';
  return write_last(at, count % parts_of_one[places], places);
}

using Written = std::array<char, most_fixed_signs>;

/// Whole inches and the fraction in lowest terms: `7 3/8`, `3/8`, `0`.
std::string mixed_inches(std::int64_t whole, std::int64_t numerator, std::int64_t denominator) {
  if (numerator == 0)
    return std::to_string(whole);
  const std::int64_t divisor = std::gcd(numerator, denominator);
  std::string text = whole == 0 ? std::string() : std::to_string(whole) + ' ';
  return text + std::to_string(numerator / divisor) + '/' + std::to_string(denominator / divisor);
}

/// A length in parts of an inch, half away from zero. The billionth absorbs what conversion to metres and
/// back leaves, so that 7 13/32 in is a half of a sixteenth and not a hair less. -1 when there are more
/// parts than a double counts.
std::int64_t parts_of_an_inch(double inches, int denominator) {
  if (denominator < 1)
    internal_error("a fraction of an inch without a denominator");
  constexpr double countable = 9007199254740992.0; // 2^53
  const double parts = std::abs(inches) * denominator;
  return parts < countable ? static_cast<std::int64_t>(std::floor(parts + 0.5 + 1e-9)) : -1;
}

using Kind = QuantityError::Kind;
constexpr double inches_per_foot = 12.0;

} // namespace

std::string format_fixed(double value, int decimals) {
  if (decimals < 0)
    internal_error("a negative number of decimals");
  Written written;
  if (const char* const end = write_by_integers(written.data(), value, decimals))
    return std::string(written.data(), static_cast<std::size_t>(end - written.data()));
  DecimalDigits decimal = shortest_decimal(value);
  round_to(decimal, decimals);
  return write(decimal, decimals);
}

char* write_fixed(char* at, double value, int decimals) {
  return decimals < 0 ? nullptr : write_by_integers(at, value, decimals);
}

std::string format_millimetres(Length length, int decimals) {
  if (decimals < 0)
    internal_error("a negative number of decimals");
  Written written;
  if (const char* const end = write_by_integers(written.data(), length.metres() * 1000.0, decimals))
    return std::string(written.data(), static_cast<std::size_t>(end - written.data()));
  DecimalDigits decimal = shortest_decimal(length.metres());
  decimal.point += 3; // by moving the point, since multiplying by 1000 could push a half off its place
  // A sum of lengths carries a few last bits of noise. What is less than a millionth of a micrometre
  // decides no half.
  if (constexpr int noise_decimals = 9; decimals < noise_decimals)
    round_to(decimal, noise_decimals);
  round_to(decimal, decimals);
  return write(decimal, decimals);
}

std::string format_feet_inches(Length length, int denominator) {
  const std::int64_t parts = parts_of_an_inch(length.inches(), denominator);
  if (parts < 0)
    return format_fixed(length.inches(), 0) + '"';
  const std::int64_t whole_inches = parts / denominator;
  const std::int64_t feet = whole_inches / 12;
  std::string text = length.metres() < 0.0 && parts > 0 ? "-" : "";
  if (feet == 0)
    return text + mixed_inches(whole_inches, parts % denominator, denominator) + '"';
  text += std::to_string(feet) + "' ";
  if (whole_inches % 12 == 0 && parts % denominator != 0)
    text += "0 "; // 4' 0 3/16": a missing figure between feet and fraction is easily read as a slip
  return text + mixed_inches(whole_inches % 12, parts % denominator, denominator) + '"';
}

std::string format_inches(Length length, int denominator) {
  const std::int64_t parts = parts_of_an_inch(length.inches(), denominator);
  if (parts < 0)
    return format_fixed(length.inches(), 0) + '"';
  const std::string sign = length.metres() < 0.0 && parts > 0 ? "-" : "";
  return sign + mixed_inches(parts / denominator, parts % denominator, denominator) + '"';
}

std::string format_number(double value) {
  if (value == 0.0)
    return "0";
  const double size = std::abs(value);
  const bool plain = size >= 1e-6 && size < 1e15; // as people write them; outside, powers of ten
  const DecimalDigits decimal = shortest_decimal(value);
  if (plain)
    return write(decimal, std::max(0, static_cast<int>(decimal.digits.size()) - decimal.point));
  std::string text = decimal.negative ? "-" : "";
  text += decimal.digits.front();
  if (decimal.digits.size() > 1)
    text.append(1, '.').append(decimal.digits, 1);
  return fmt::format("{}e{:+03}", text, decimal.point - 1);
}

std::optional<QuantityError::Kind> scan_inches_after_feet(TextCursor& cursor, const ScannedNumber& feet,
                                                          FeetMark mark, double& inches) {
  inches = feet.value * inches_per_foot;
  if (cursor.at_end())
    return std::nullopt;
  // 38'-7 3/8" is how drawings write it. After the word the same hyphen could be meant as a minus: 38 ft-7
  // in.
  if (mark == FeetMark::word || !cursor.take('-'))
    cursor.skip_blanks();

  ScannedNumber rest;
  const auto error = scan_number(cursor, rest);
  if (error && error != Kind::improper_mixed)
    return error;
  inches += rest.value;

  // The mark before the size: in 11'642 mm the apostrophe was no feet.
  const bool blank = cursor.skip_blanks();
  if (cursor.at_end())
    return Kind::missing_unit;
  // Behind a blank the straight mark begins a text in quotes.
  if (blank && cursor.peek() == '"')
    return Kind::malformed;
  TextCursor ahead = cursor;
  if ((!ahead.take_inch_mark() && !ahead.take("in")) || !ahead.at_end())
    return error ? error : Kind::unknown_unit;
  cursor = ahead;
  if (error || rest.value >= inches_per_foot || feet.form != ScannedNumber::Form::whole)
    return Kind::improper_mixed;
  if (inches > largest_number)
    return Kind::too_large;
  return std::nullopt;
}

} // namespace sheerpole
