#include "calculate/length_text.hpp"

namespace sheerpole {

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
