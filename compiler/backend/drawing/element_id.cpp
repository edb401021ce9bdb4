#include "backend/drawing/element_id.hpp"

namespace sheerpole {

std::string element_id(std::string_view name) {
  constexpr std::string_view digits = "0123456789abcdef";
  std::string id;
  for (const char c : name) {
    const bool plain =
        (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' || c == '-';
    const auto byte = static_cast<unsigned char>(c);
    if (plain)
      id += c;
    else if (c == '_')
      id += "__";
    else
      (id += '_') += {digits[byte >> 4], digits[byte & 0x0fU]};
  }
  return id;
}

} // namespace sheerpole
