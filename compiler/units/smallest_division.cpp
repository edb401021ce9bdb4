#include "units/smallest_division.hpp"

#include "units/parse_quantity.hpp"

#include <string>
#include <variant>

namespace sheerpole {

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
