#include "units/quantity_text.hpp"

#include "units/format_length.hpp"

#include <numbers>

namespace sheerpole {

std::string trimmed_number(double value, int decimals) {
  std::string text = format_fixed(value, decimals);
  if (text.find('.') == std::string::npos)
    return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.')
    text.pop_back();
  return text;
}

std::string length_text(Length length) {
  return trimmed_number(length.millimetres(), 2) + " mm";
}

std::string percent_text(double share) {
  return trimmed_number(share * 100.0, 1) + " %";
}

std::string share_text(double share) {
  return format_fixed(share, 3);
}

std::string times_text(double ratio) {
  return format_fixed(ratio, 2);
}

std::string force_text(Force force) {
  if (force < Force::kilonewtons(1.0) && force > Force::kilonewtons(-1.0))
    return format_fixed(force.newtons(), 0) + " N";
  return trimmed_number(force.kilonewtons(), 2) + " kN";
}

std::string angle_text(double radians) {
  return trimmed_number(radians * 180.0 / std::numbers::pi, 1) + " deg";
}

std::string temperature_text(double kelvin) {
  return format_fixed(kelvin - 273.15, 0) + " degC";
}

} // namespace sheerpole
