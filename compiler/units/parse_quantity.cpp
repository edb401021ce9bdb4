#include "units/parse_quantity.hpp"

#include "units/format_length.hpp"
#include "units/scan_number.hpp"
#include "units/text_cursor.hpp"
#include "units/unit.hpp"

#include <cmath>
#include <optional>
#include <string>
#include <variant>

namespace sheerpole {

namespace {

using Kind = QuantityError::Kind;

constexpr double metres_per_inch = 0.0254; // exact, 1959
constexpr double metres_per_foot = 0.3048;

double in_si(double number, const Unit& unit) {
  if (unit.offset != 0.0)
    return number * unit.factor + unit.offset;
  // Feet through inches, so that 38 ft, 38' and 456 in are the same number to the last bit.
  if (unit.factor == metres_per_foot && unit.dimension == dimension::length)
    return number * 12.0 * metres_per_inch;
  // 0.001 is not a binary fraction but 1000 is: dividing keeps 11_642 mm equal to 11.642 m.
  if (unit.factor < 1.0) {
    const double inverse = 1.0 / unit.factor;
    if (inverse == std::nearbyint(inverse))
      return number / inverse;
  }
  return number * unit.factor;
}

/// `ft` as a word of its own, before inches.
bool take_feet_word(TextCursor& cursor) {
  if (!cursor.rest().starts_with("ft"))
    return false;
  const char next = cursor.peek(2);
  if (TextCursor::is_letter(next) || next == '-' || next == '/' || next == '_' || next == '\0')
    return false;
  return cursor.take("ft");
}

/// A minus before nothing is nothing: `-0 mm` must not print its sign anywhere.
double with_sign(double number, bool negative) {
  return negative && number != 0.0 ? -number : number;
}

Quantity length_of_inches(double inches, bool negative) {
  return {with_sign(inches, negative) * metres_per_inch, dimension::length};
}

/// Reads the sign and the number with which a text begins. Returns why not, or nothing.
std::optional<Refusal> scan_signed_number(TextCursor& cursor, ScannedNumber& number, bool& negative) {
  if (cursor.at_end())
    return Refusal{Kind::empty, 0};
  negative = cursor.take('-');
  if (const auto error = scan_number(cursor, number))
    return Refusal{*error, cursor.position()};
  return std::nullopt;
}

} // namespace

Result<Quantity, QuantityError> parse_quantity(std::string_view text) {
  text = trim_blanks(text);
  const auto scanned = scan_quantity(text);
  if (const auto* quantity = std::get_if<Quantity>(&scanned))
    return *quantity;
  return explain_refusal(text, *std::get_if<Refusal>(&scanned), Expected::quantity);
}

LengthUnit length_unit_of(std::string_view text) {
  TextCursor cursor(trim_blanks(text));
  ScannedNumber number;
  bool negative = false;
  if (scan_signed_number(cursor, number, negative))
    return LengthUnit::none;
  cursor.skip_blanks();
  if (const Unit* unit = find_unit(cursor.rest())) {
    if (unit->dimension != dimension::length)
      return LengthUnit::none;
    return unit->factor == metres_per_foot   ? LengthUnit::feet
           : unit->factor == metres_per_inch ? LengthUnit::inches
                                             : LengthUnit::metric;
  }
  if (cursor.take_inch_mark())
    return LengthUnit::inches;
  return cursor.take_foot_mark() || take_feet_word(cursor) ? LengthUnit::feet : LengthUnit::none;
}

Result<double, QuantityError> parse_number(std::string_view text) {
  text = trim_blanks(text);
  const auto scanned = scan_plain_number(text);
  if (const auto* number = std::get_if<double>(&scanned))
    return *number;
  return explain_refusal(text, *std::get_if<Refusal>(&scanned), Expected::number);
}

std::variant<Quantity, Refusal> scan_quantity(std::string_view text) {
  TextCursor cursor(text);
  ScannedNumber number;
  bool negative = false;
  if (const auto refusal = scan_signed_number(cursor, number, negative))
    return *refusal;
  const bool blank = cursor.skip_blanks();
  if (cursor.at_end())
    return Refusal{Kind::missing_unit, cursor.position()};
  // Behind a blank a straight mark begins a text in quotes: 7 3/8 "left over from the old mast".
  if (blank && (cursor.peek() == '"' || cursor.peek() == '\''))
    return Refusal{Kind::malformed, cursor.position()};

  const std::size_t unit_start = cursor.position();
  if (const Unit* unit = find_unit(cursor.rest()))
    return Quantity{in_si(with_sign(number.value, negative), *unit), unit->dimension};
  if (cursor.take_inch_mark()) {
    if (!cursor.at_end())
      return Refusal{Kind::malformed, cursor.position()};
    return length_of_inches(number.value, negative);
  }
  const bool sign = cursor.take_foot_mark();
  if (sign || take_feet_word(cursor)) {
    double inches = 0.0;
    const FeetMark mark = sign ? FeetMark::sign : FeetMark::word;
    if (const auto error = scan_inches_after_feet(cursor, number, mark, inches))
      return Refusal{*error, cursor.position()};
    return length_of_inches(inches, negative);
  }
  return Refusal{Kind::unknown_unit, unit_start};
}

std::variant<double, Refusal> scan_plain_number(std::string_view text) {
  TextCursor cursor(text);
  ScannedNumber number;
  bool negative = false;
  if (const auto refusal = scan_signed_number(cursor, number, negative))
    return *refusal;
  if (!cursor.at_end())
    return Refusal{Kind::malformed, cursor.position()};
  return with_sign(number.value, negative);
}

namespace {

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

bool is_blank(char c) {
  return c == ' ' || c == '\t';
}

std::string_view without_blanks(std::string_view text) {
  while (!text.empty() && is_blank(text.front()))
    text.remove_prefix(1);
  while (!text.empty() && is_blank(text.back()))
    text.remove_suffix(1);
  return text;
}

/// The number that a text ends with: "1/8" of "37 ft 4 1/8", "11_642" of "11_642". Its blanks are those of
/// a mixed number, which begin another.
std::string_view last_number(std::string_view text) {
  std::size_t from = text.size();
  while (from > 0 && (is_digit(text[from - 1]) || text[from - 1] == '.' || text[from - 1] == '_' ||
                      text[from - 1] == '/'))
    --from;
  return text.substr(from);
}

} // namespace

std::optional<Length> smallest_division(std::string_view written) {
  written = without_blanks(written);
  const auto whole = scan_quantity(written);
  const Quantity* quantity = std::get_if<Quantity>(&whole);
  if (quantity == nullptr || quantity->dimension != dimension::length)
    return std::nullopt;
  std::size_t end = written.size();
  while (end > 0 && !is_digit(written[end - 1]))
    --end;
  const std::string_view unit = without_blanks(written.substr(end));
  const std::string_view number = last_number(written.substr(0, end));
  auto of_one = scan_quantity("1" + std::string(unit));
  if (std::holds_alternative<Refusal>(of_one))
    of_one = scan_quantity("1 " + std::string(unit));
  const Quantity* one = std::get_if<Quantity>(&of_one);
  if (number.empty() || one == nullptr)
    return std::nullopt;
  double division = one->si;
  if (const std::size_t slash = number.find('/'); slash != std::string_view::npos) {
    const auto below = scan_plain_number(number.substr(slash + 1));
    const double* parts = std::get_if<double>(&below);
    if (parts == nullptr || *parts <= 0.0)
      return std::nullopt;
    division /= *parts;
  } else if (const std::size_t point = number.find('.'); point != std::string_view::npos) {
    for (std::size_t i = point + 1; i < number.size(); ++i)
      if (is_digit(number[i]))
        division /= 10.0;
  }
  return Length::metres(division);
}

} // namespace sheerpole
