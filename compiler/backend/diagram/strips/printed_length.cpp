#include "backend/diagram/strips/printed_length.hpp"

#include "units/format_length.hpp"

#include <cmath>

namespace sheerpole {

std::string printed_distance(bool unknown, Length known) {
  const std::string number = format_millimetres(known);
  if (!unknown)
    return number;
  if (number == "0")
    return "X";
  return number.front() == '-' ? "X - " + number.substr(1) : "X + " + number;
}

std::string printed_sum(const LengthSum& sum) {
  return printed_distance(sum.unknown, sum.known());
}

std::string printed_part(Length length) {
  const double millimetres = length.millimetres();
  const bool whole = std::abs(millimetres - std::round(millimetres)) < 0.05;
  return format_millimetres(length, whole ? 0 : 1);
}

} // namespace sheerpole
