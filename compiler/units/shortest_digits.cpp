#include "units/shortest_digits.hpp"

#include "base/internal_error.hpp"

#include <fast_float/fast_float.h>
#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cmath>
#include <system_error>

namespace sheerpole {

DecimalDigits shortest_decimal(double value) {
  if (!std::isfinite(value))
    internal_error("a number to print that is not finite");
  std::array<char, 40> buffer;
  const auto end = fmt::format_to(buffer.data(), "{}", value); // 0.65, 11642 or 1.5e-07
  std::string_view text(buffer.data(), static_cast<std::size_t>(end - buffer.data()));
  DecimalDigits decimal;
  decimal.negative = text.starts_with('-');
  if (decimal.negative)
    text.remove_prefix(1);
  const std::size_t exponent_at = text.find('e');
  if (exponent_at != std::string_view::npos) {
    std::string_view exponent = text.substr(exponent_at + 1);
    if (exponent.starts_with('+'))
      exponent.remove_prefix(1);
    std::from_chars(exponent.data(), exponent.data() + exponent.size(), decimal.point);
    text = text.substr(0, exponent_at);
  }
  const std::size_t before_point = std::min(text.find('.'), text.size());
  decimal.point += static_cast<int>(before_point);
  for (const char c : text)
    if (c != '.')
      decimal.digits += c;
  // Zeros before the first digit that counts, and behind the last one, are left out; of zero one stays.
  const std::size_t first = std::min(decimal.digits.find_first_not_of('0'), decimal.digits.size() - 1);
  decimal.digits.erase(0, first);
  decimal.point -= static_cast<int>(first);
  decimal.digits.resize(std::max<std::size_t>(decimal.digits.find_last_not_of('0') + 1, 1));
  if (value == 0.0)
    decimal.point = 1;
  return decimal;
}

ReadDigits read_digits(std::string_view text) {
  ReadDigits read;
  const char* const end = text.data() + text.size();
  // Words such as "inf" are numbers to the library.
  const std::size_t first = text.starts_with('-') ? 1 : 0;
  const bool begins =
      first < text.size() && ((text[first] >= '0' && text[first] <= '9') || text[first] == '.');
  const auto result = fast_float::from_chars(text.data(), end, read.value);
  const bool no_number = result.ec != std::errc{} && result.ec != std::errc::result_out_of_range;
  if (!begins || no_number || result.ptr != end) {
    read = {0.0, DigitsFault::malformed};
  } else if (!std::isfinite(read.value)) {
    read = {0.0, DigitsFault::too_large};
  } else if (read.value == 0.0) {
    const std::string_view digits = text.substr(0, text.find_first_of("eE"));
    if (digits.find_first_of("123456789") != std::string_view::npos)
      read = {0.0, DigitsFault::too_small};
  }
  return read;
}

} // namespace sheerpole
