#include "backend/trials.hpp"

#include <cmath>

namespace sheerpole {

namespace {

std::string grouped(std::size_t number) {
  std::string digits = std::to_string(number);
  for (std::size_t at = digits.size(); at > 3;) {
    at -= 3;
    digits.insert(at, " ");
  }
  return digits;
}

} // namespace

std::string trials_words(double share, std::size_t draws) {
  const auto count = static_cast<std::size_t>(std::llround(share * static_cast<double>(draws)));
  const std::string of = " of " + grouped(draws) + " draws";
  return count == draws ? "all" + of : count == 0 ? "none" + of : grouped(count) + of;
}

} // namespace sheerpole
