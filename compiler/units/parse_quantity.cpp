#include "units/parse_quantity.hpp"

#include "units/likely_readings.hpp"
#include "units/scan_quantity.hpp"
#include "units/text_cursor.hpp"

namespace sheerpole {

Result<Quantity, QuantityError> parse_quantity(std::string_view text) {
  text = trim_blanks(text);
  const auto scanned = scan_quantity(text);
  if (const auto* quantity = std::get_if<Quantity>(&scanned))
    return *quantity;
  return explain_refusal(text, *std::get_if<Refusal>(&scanned), Expected::quantity);
}

Result<double, QuantityError> parse_number(std::string_view text) {
  text = trim_blanks(text);
  const auto scanned = scan_plain_number(text);
  if (const auto* number = std::get_if<double>(&scanned))
    return *number;
  return explain_refusal(text, *std::get_if<Refusal>(&scanned), Expected::number);
}

} // namespace sheerpole
