#include "calculate/length_text.hpp"

#include "units/format_length.hpp"

namespace sheerpole {

namespace {

std::string trimmed(double value, int decimals) {
  std::string text = format_fixed(value, decimals);
  if (text.find('.') == std::string::npos)
    return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.')
    text.pop_back();
  return text;
}

} // namespace

std::string length_text(Length length) {
  return trimmed(length.millimetres(), 2) + " mm";
}

std::string percent_text(double share) {
  return trimmed(share * 100.0, 1) + " %";
}

std::string sum_text(const LengthSum& sum) {
  const Length known = sum.known();
  if (!sum.unknown)
    return length_text(known);
  const std::string amount = length_text(known < Length{} ? -known : known);
  if (amount == length_text(Length{}))
    return "X";
  return (known < Length{} ? "X - " : "X + ") + amount;
}

} // namespace sheerpole
