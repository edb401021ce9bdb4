#include "units/scan_number.hpp"

#include "units/shortest_digits.hpp"
#include "units/text_cursor.hpp"

#include <algorithm>
#include <string>

namespace sheerpole {

namespace {

using Kind = QuantityError::Kind;

/// Digits, with single underscores between digits. False when there is none or an underscore stands
/// elsewhere.
bool scan_digits(TextCursor& cursor) {
  if (!cursor.at_digit())
    return false;
  while (true) {
    while (cursor.at_digit())
      cursor.move_to(cursor.position() + 1);
    if (cursor.peek() != '_')
      return true;
    if (!cursor.at_digit(1))
      return false;
    cursor.move_to(cursor.position() + 1);
  }
}

std::optional<Kind> convert_plain(std::string_view digits, double& value) {
  const ReadDigits read = read_digits(digits);
  // Too small to be a number at all is not "too large".
  if (read.fault == DigitsFault::malformed || read.fault == DigitsFault::too_small)
    return Kind::malformed;
  if (read.fault == DigitsFault::too_large)
    return Kind::too_large;
  value = read.value;
  if (value > largest_number)
    return Kind::too_large;
  return std::nullopt;
}

/// Whether the groups have three figures each, but for the one that is farthest from the point.
bool in_threes(std::string_view digits, bool decimals) {
  while (true) {
    const std::size_t cut = decimals ? digits.find('_') : digits.rfind('_');
    if (cut == digits.npos)
      return digits.size() <= 3;
    const std::string_view nearest = decimals ? digits.substr(0, cut) : digits.substr(cut + 1);
    if (nearest.size() != 3)
      return false;
    digits = decimals ? digits.substr(cut + 1) : digits.substr(0, cut);
  }
}

bool grouped_oddly(std::string_view number) {
  const std::size_t point = std::min(number.find('.'), number.size());
  const std::string_view whole = number.substr(0, point);
  const std::string_view decimals = number.substr(std::min(point + 1, number.size()));
  return (whole.find('_') != whole.npos && !in_threes(whole, false)) ||
         (decimals.find('_') != decimals.npos &&
          !in_threes(decimals.substr(0, decimals.find_first_of("eE")), true));
}

std::optional<Kind> convert(std::string_view digits, double& value) {
  if (digits.find('_') == digits.npos)
    return convert_plain(digits, value);
  if (grouped_oddly(digits))
    return Kind::odd_groups;
  std::string plain;
  plain.reserve(digits.size());
  for (const char c : digits)
    if (c != '_')
      plain += c;
  return convert_plain(plain, value);
}

/// The bottom of a fraction, from behind the slash.
std::optional<Kind> scan_denominator(TextCursor& cursor, double& denominator) {
  const std::size_t start = cursor.position();
  if (!scan_digits(cursor) || cursor.peek() == '.' || cursor.peek() == '/')
    return Kind::malformed;
  if (const auto error = convert(cursor.since(start), denominator))
    return error;
  if (denominator == 0.0)
    return Kind::zero_denominator;
  return std::nullopt;
}

/// A fraction and a decimal close a number: `1/2 3/8` and `7.5 3/8` are no sums.
std::optional<Kind> refuse_continuation(TextCursor cursor) {
  const bool blanks = cursor.skip_blanks();
  if ((blanks && cursor.at_digit()) || cursor.take_fraction_character() != 0.0)
    return Kind::improper_mixed;
  return std::nullopt;
}

/// The fraction of a mixed number, when one follows the whole part: ` 3/8`, `-3/8`, or a fraction
/// character. The cursor stays where it was when none does.
std::optional<Kind> scan_fraction_after_whole(TextCursor& cursor, ScannedNumber& number) {
  TextCursor ahead = cursor;
  const bool hyphen = ahead.take('-');
  const bool blanks = !hyphen && ahead.skip_blanks();
  if (const double fraction = ahead.take_fraction_character(); fraction != 0.0) {
    number.value += fraction;
    number.form = ScannedNumber::Form::fraction;
    cursor = ahead;
    return refuse_continuation(cursor);
  }
  if ((!hyphen && !blanks) || !ahead.at_digit())
    return std::nullopt;
  const std::size_t start = ahead.position();
  if (!scan_digits(ahead))
    return Kind::malformed;
  if (ahead.peek() != '/') // with a hyphen, `38-7`: the caller meets the hyphen and says what is wrong
    return blanks ? std::optional(Kind::spaced_number) : std::nullopt;
  double numerator = 0.0;
  if (const auto error = convert(ahead.since(start), numerator))
    return error;
  ahead.take('/');
  double denominator = 0.0;
  if (const auto error = scan_denominator(ahead, denominator))
    return error;
  number.value += numerator / denominator;
  number.form = ScannedNumber::Form::fraction;
  cursor = ahead;
  if (numerator >= denominator)
    return Kind::improper_mixed;
  return refuse_continuation(cursor);
}

enum class Separator { none, comma, point, blank, apostrophe };

/// Digits and the separator before them.
struct Group {
  Separator before = Separator::none;
  std::string_view digits;
};

std::string_view take_digits(TextCursor& cursor) {
  const std::size_t start = cursor.position();
  while (cursor.at_digit())
    cursor.move_to(cursor.position() + 1);
  return cursor.since(start);
}

Separator take_separator(TextCursor& cursor) {
  if (cursor.take(','))
    return Separator::comma;
  if (cursor.take('.'))
    return Separator::point;
  if (cursor.take_foot_mark())
    return Separator::apostrophe;
  return cursor.skip_blanks() ? Separator::blank : Separator::none;
}

/// The groups from the cursor on. A separator without digits behind it, and digits that are the top of a
/// fraction behind a blank, are not part of it.
std::vector<Group> take_groups(TextCursor& cursor) {
  std::vector<Group> groups{{Separator::none, take_digits(cursor)}};
  while (true) {
    TextCursor ahead = cursor;
    const Separator separator = take_separator(ahead);
    if (separator == Separator::none || !ahead.at_digit())
      return groups;
    const std::string_view digits = take_digits(ahead);
    if (separator == Separator::blank && ahead.peek() == '/')
      return groups;
    groups.push_back({separator, digits});
    cursor = ahead;
  }
}

bool may_begin_thousands(std::string_view digits) {
  return !digits.empty() && digits.size() <= 3 && digits.front() != '0';
}

/// The groups joined by underscores, when all but the first have three digits and one separator stands
/// between them all; the last may be decimals, set off by another. Empty otherwise.
std::string as_thousands(const std::vector<Group>& groups) {
  if (groups.size() < 2 || !may_begin_thousands(groups.front().digits))
    return {};
  const Separator separator = groups[1].before;
  std::string text(groups.front().digits);
  for (std::size_t i = 1; i < groups.size(); ++i) {
    const bool decimals = i + 1 == groups.size() && groups[i].before != separator &&
                          (groups[i].before == Separator::comma || groups[i].before == Separator::point);
    if (!decimals && (groups[i].before != separator || groups[i].digits.size() != 3))
      return {};
    text += decimals ? '.' : '_';
    text += groups[i].digits;
  }
  return text;
}

} // namespace

std::optional<QuantityError::Kind> scan_number(TextCursor& cursor, ScannedNumber& number) {
  number = {};
  if (const double fraction = cursor.take_fraction_character(); fraction != 0.0) {
    number = {fraction, ScannedNumber::Form::fraction};
    return refuse_continuation(cursor);
  }
  const std::size_t start = cursor.position();
  if (!scan_digits(cursor))
    return Kind::malformed;
  if (cursor.take('/')) {
    const std::string_view top = cursor.since(start);
    if (const auto error = convert(top.substr(0, top.size() - 1), number.value))
      return error;
    double denominator = 0.0;
    if (const auto error = scan_denominator(cursor, denominator))
      return error;
    number = {number.value / denominator, ScannedNumber::Form::fraction};
    return refuse_continuation(cursor);
  }
  if (cursor.take('.')) {
    number.form = ScannedNumber::Form::decimal;
    if (!scan_digits(cursor))
      return Kind::malformed;
  }
  if (cursor.peek() == ',' && cursor.at_digit(1))
    return Kind::decimal_comma;
  if (cursor.peek() == 'e' || cursor.peek() == 'E') {
    const std::size_t sign = cursor.peek(1) == '-' || cursor.peek(1) == '+' ? 1 : 0;
    if (cursor.at_digit(1 + sign)) {
      number.form = ScannedNumber::Form::decimal;
      cursor.move_to(cursor.position() + 1 + sign);
      if (!scan_digits(cursor))
        return Kind::malformed;
    }
  }
  if (const auto error = convert(cursor.since(start), number.value))
    return error;
  if (number.form == ScannedNumber::Form::whole)
    return scan_fraction_after_whole(cursor, number);
  return refuse_continuation(cursor);
}

std::vector<std::string> readings_of_odd_groups(std::string_view text) {
  std::string plain(text);
  std::erase(plain, '_');
  std::vector<std::string> readings{std::move(plain)};
  const bool one = std::count(text.begin(), text.end(), '_') == 1;
  if (one && text.find('.') == text.npos) {
    std::string decimal(text);
    decimal[decimal.find('_')] = '.';
    readings.push_back(std::move(decimal));
  }
  return readings;
}

std::vector<std::string> readings_of_digit_groups(std::string_view text) {
  TextCursor cursor(text);
  while (!cursor.at_end()) {
    if (!cursor.at_digit()) {
      cursor.move_to(cursor.position() + 1);
      continue;
    }
    const std::size_t start = cursor.position();
    const std::vector<Group> groups = take_groups(cursor);
    if (groups.size() < 2)
      continue;
    std::vector<std::string> numbers;
    if (groups.size() == 2 && groups[1].before == Separator::comma)
      numbers.push_back(std::string(groups[0].digits) + '.' + std::string(groups[1].digits));
    // One point before three digits is a decimal, and was read as one.
    const bool plain_decimal = groups.size() == 2 && groups[1].before == Separator::point;
    if (std::string thousands = as_thousands(groups); !thousands.empty() && !plain_decimal)
      numbers.push_back(std::move(thousands));
    if (numbers.empty())
      continue;
    for (std::string& number : numbers)
      number = std::string(text.substr(0, start)).append(number).append(cursor.rest());
    return numbers;
  }
  return {};
}

} // namespace sheerpole
