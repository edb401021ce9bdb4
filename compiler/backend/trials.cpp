#include "backend/trials.hpp"

#include "units/format_length.hpp"

#include <cmath>

namespace sheerpole {

std::string grouped(std::size_t number) {
  std::string digits = std::to_string(number);
  for (std::size_t at = digits.size(); at > 3;) {
    at -= 3;
    digits.insert(at, " ");
  }
  return digits;
}

std::string trials_words(double share, std::size_t draws) {
  const auto count = static_cast<std::size_t>(std::llround(share * static_cast<double>(draws)));
  const std::string of = " of " + grouped(draws) + " draws";
  return count == draws ? "all" + of : count == 0 ? "none" + of : grouped(count) + of;
}

std::string variance_words(double share) {
  if (share < 0.0005)
    return "under 0.1 %";
  return share >= 0.9995 ? "all of it" : format_fixed(share * 100.0, 1) + " %";
}

} // namespace sheerpole
