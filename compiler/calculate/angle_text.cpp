#include "calculate/angle_text.hpp"

#include "units/format_length.hpp"

#include <numbers>

namespace sheerpole {

std::string angle_text(double radians) {
  std::string text = format_fixed(radians * 180.0 / std::numbers::pi, 1);
  if (text.ends_with(".0"))
    text.erase(text.size() - 2);
  return text + " deg";
}

std::string share_text(double share) {
  return format_fixed(share, 3);
}

} // namespace sheerpole
