
#include "units/format_length.hpp"
#include "units/scan_number.hpp"
#include "units/unit.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerpole {

namespace {

using Kind = QuantityError::Kind;

/// Nobody writes a longer quantity; nothing is guessed about what is.
constexpr std::size_t longest_text = 64;
constexpr std::size_t most_suggestions = 3;

/// Collects what would be accepted, each spelling once.
class Suggestions {
public:
  Suggestions(Expected expected, std::vector<std::string>& into) : expected_(expected), into_(into) {}

  bool add(std::string reading) {
    if (into_.size() >= most_suggestions || !accepted(reading) ||
        std::find(into_.begin(), into_.end(), reading) != into_.end())
      return false;
    into_.push_back(std::move(reading));
    return true;
  }
  bool add(const std::vector<std::string>& readings) {
    bool any = false;
    for (const std::string& reading : readings)
      any = add(reading) || any;
    return any;
  }

private:
  bool accepted(const std::string& reading) const {
    return expected_ == Expected::quantity ? std::holds_alternative<Quantity>(scan_quantity(reading))
                                           : std::holds_alternative<double>(scan_plain_number(reading));
  }

  Expected expected_;
  std::vector<std::string>& into_;
};

std::string replace_all(std::string text, std::string_view what, std::string_view by) {
  for (std::size_t at = text.find(what); at != text.npos; at = text.find(what, at + by.size()))
    text.replace(at, what.size(), by);
  return text;
}

/// Signs of a word processor that have one plain spelling each: minus and dashes, the fraction slash,
/// thirds.
std::string with_plain_signs(std::string text) {
  constexpr std::array<std::array<std::string_view, 2>, 7> plain{{{"\u2212", "-"},
                                                                  {"\u2010", "-"},
                                                                  {"\u2011", "-"},
                                                                  {"\u2013", "-"},
                                                                  {"\u2044", "/"},
                                                                  {"\u2153", " 1/3"},
                                                                  {"\u2154", " 2/3"}}};
  for (const auto& [sign, spelling] : plain)
    text = replace_all(std::move(text), sign, spelling);
  return std::string(trim_blanks(text));
}

/// `.5 mm`, `5. mm`, `38 ft. 7 in.`. Nothing is guessed about two points next to each other.
std::string with_digits_round_point(std::string_view text) {
  const auto at = [&](std::size_t i) { return i < text.size() ? text[i] : ' '; };
  std::string result;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char before = i > 0 ? text[i - 1] : ' ';
    const char after = at(i + 1);
    const bool alone = text[i] == '.' && before != '.' && after != '.';
    const bool behind = TextCursor::is_digit(before) || TextCursor::is_letter(before);
    if (alone && behind && !TextCursor::is_digit(after))
      continue;
    if (alone && TextCursor::is_digit(after) && !TextCursor::is_digit(before))
      result += '0';
    result += text[i];
  }
  return result;
}

/// `- 5 mm`, `3 / 8 in`, `38' - 7 3/8"`, `1 . 5 m`: a sign with blanks where it belongs to the number.
std::string without_blanks_round(std::string_view signs, std::string_view text) {
  std::string result;
  TextCursor cursor(text);
  while (!cursor.at_end()) {
    const std::size_t start = cursor.position();
    if (cursor.skip_blanks()) {
      const bool behind = !result.empty() && signs.find(result.back()) != signs.npos;
      if (!behind && (cursor.at_end() || signs.find(cursor.peek()) == signs.npos))
        result += cursor.since(start);
      continue;
    }
    result += cursor.peek();
    cursor.move_to(start + 1);
  }
  return result;
}

/// Feet and inches with a hyphen or a blank where the marks belong: `38-7-3/8`, `38-7`, `38 7 3/8`, with or
/// without `in` or an inch mark behind. Empty when it is not of that form.
std::string as_feet_and_inches(std::string_view text) {
  TextCursor cursor(text);
  cursor.take('-');
  std::size_t digits = 0;
  while (cursor.at_digit(digits))
    ++digits;
  if (digits == 0 || digits > 3) // no mast has a thousand feet; 2026-05 is a date
    return {};
  cursor.move_to(cursor.position() + digits);
  const std::string_view feet = text.substr(0, cursor.position());
  const bool hyphen = cursor.take('-');
  if (!hyphen && !cursor.skip_blanks())
    return {};
  const std::size_t start = cursor.position();
  ScannedNumber inches;
  if (scan_number(cursor, inches))
    return {};
  const std::string_view number = cursor.since(start);
  cursor.skip_blanks();
  if (!cursor.at_end() && cursor.rest() != "in" && (!cursor.take_inch_mark() || !cursor.at_end()))
    return {};
  if (!hyphen && inches.form != ScannedNumber::Form::fraction)
    return {};
  return std::string(feet) + "' " + std::string(number) + '"';
}

/// `7 3/8` and `38' 7`: a fraction, or a number behind feet, is inches. Empty for a number that could be
/// anything.
std::string with_inches_closed(std::string_view text) {
  TextCursor cursor(text);
  cursor.take('-');
  ScannedNumber number;
  if (scan_number(cursor, number))
    return {};
  cursor.skip_blanks();
  if (cursor.at_end())
    return number.form == ScannedNumber::Form::fraction ? std::string(text) + " in" : std::string{};
  return std::string(text) + (cursor.take_foot_mark() ? "\"" : " in");
}

/// The same value with every part smaller than the next unit: `8 1/8 in` for `7 9/8 in`, `39' 2"` for `38'
/// 14"`. Empty when it is no whole number of 64ths.
std::string carried(std::string_view text) {
  TextCursor cursor(text);
  const bool negative = cursor.take('-');
  ScannedNumber number;
  const auto error = scan_number(cursor, number);
  if (error && (error != Kind::improper_mixed || number.form != ScannedNumber::Form::fraction))
    return {};
  double value = number.value;
  const std::string_view behind = cursor.rest();
  bool feet = false;
  if (!error) {
    cursor.skip_blanks();
    const bool sign = cursor.take_foot_mark();
    if (!sign && !cursor.take("ft"))
      return {};
    if (scan_inches_after_feet(cursor, number, sign ? FeetMark::sign : FeetMark::word, value) !=
        Kind::improper_mixed)
      return {};
    feet = true;
  }
  if (value > 1e6 || value * 64.0 != std::nearbyint(value * 64.0))
    return {};
  const Length length = Length::inches(negative ? -value : value);
  if (feet)
    return format_feet_inches(length, 64);
  std::string mixed = format_inches(length, 64);
  mixed.pop_back();
  return mixed.append(behind);
}

/// Every word from `at` on spelt as the unit it may stand for: `38 feet 7 inches`.
std::string with_words_respelt(std::string_view text, std::size_t at) {
  std::string result(text.substr(0, at));
  TextCursor cursor(text, at);
  while (!cursor.at_end()) {
    const std::size_t start = cursor.position();
    while (TextCursor::is_letter(cursor.peek()))
      cursor.move_to(cursor.position() + 1);
    const std::string_view word = cursor.since(start);
    if (word.empty()) {
      result += cursor.peek();
      cursor.move_to(start + 1);
    } else {
      result += find_unit(word) ? std::string(word) : respell_unit(word).value_or(std::string(word));
    }
  }
  return result;
}

/// What stands where a unit belongs, up to a blank; empty when it is nothing like a word.
std::string_view word_at(std::string_view text, std::size_t at) {
  TextCursor cursor(text, at);
  const char first = cursor.peek();
  if (!TextCursor::is_letter(first) && first != '%' && static_cast<unsigned char>(first) < 0x80)
    return {};
  while (!cursor.at_end() && TextCursor::blank_size(cursor.rest()) == 0)
    cursor.move_to(cursor.position() + 1);
  return cursor.since(at);
}

/// Slips of writing that leave no doubt about the number. True when there was one.
bool add_plain_spellings(std::string_view text, Suggestions& suggestions) {
  const std::string plain_signs = with_plain_signs(std::string(text));
  return suggestions.add({std::string(trim_blanks(text.substr(text.starts_with('+') ? 1 : 0))), plain_signs,
                          with_digits_round_point(text), replace_all(std::string(text), "ft-", "ft "),
                          std::string(trim_blanks(replace_all(std::string(text), "_", ""))),
                          without_blanks_round("-/.\"'", text), without_blanks_round("-/.", plain_signs)});
}

} // namespace

std::string alternatives(const std::vector<std::string>& readings) {
  std::string result;
  for (std::size_t i = 0; i < readings.size(); ++i)
    result += (i == 0 ? "" : i + 1 == readings.size() ? " or " : ", ") + readings[i];
  return result;
}

QuantityError explain_refusal(std::string_view text, Refusal refusal, Expected expected) {
  QuantityError error{refusal.kind, {}, {}};
  Suggestions suggestions(expected, error.suggestions);
  const bool guess = text.size() <= longest_text;

  if (error.kind == Kind::unknown_unit) {
    const std::string_view word = word_at(text, refusal.at);
    if (word.empty() || find_unit(word)) {
      error.kind = Kind::malformed;
    } else {
      error.unit = std::string(word);
      if (const auto unit = guess ? respell_unit(word) : std::nullopt)
        suggestions.add(std::string(text.substr(0, refusal.at))
                            .append(*unit)
                            .append(text.substr(refusal.at + word.size())));
      if (guess)
        suggestions.add(with_words_respelt(text, refusal.at));
    }
  }
  if (!guess)
    return error;

  switch (error.kind) {
  case Kind::missing_unit:
    suggestions.add(with_inches_closed(text));
    break;
  case Kind::decimal_comma:
    suggestions.add(readings_of_digit_groups(text));
    break;
  case Kind::odd_groups:
    suggestions.add(readings_of_odd_groups(text));
    break;
  case Kind::improper_mixed:
    suggestions.add(carried(text));
    break;
  case Kind::unknown_unit:
    if (!error.suggestions.empty())
      break;
    [[fallthrough]];
  case Kind::spaced_number:
  case Kind::malformed:
    if (add_plain_spellings(text, suggestions)) {
      error.kind = Kind::malformed;
      error.unit.clear();
    } else if (suggestions.add(as_feet_and_inches(text))) {
      error.kind = Kind::missing_unit;
      error.unit.clear();
    } else {
      suggestions.add(readings_of_digit_groups(text));
    }
    break;
  case Kind::empty:
  case Kind::zero_denominator:
  case Kind::too_large:
    break;
  }
  return error;
}

} // namespace sheerpole
