#include "base/plain_text.hpp"

#include "base/code_point.hpp"

namespace sheerpole {

bool is_hidden_control(char32_t value) {
  const bool control = (value < 0x20 && value != '\t' && value != '\n') || (value >= 0x7F && value <= 0x9F);
  const bool separator = value == 0x2028 || value == 0x2029;
  const bool direction = (value >= 0x202A && value <= 0x202E) || (value >= 0x2066 && value <= 0x2069);
  const bool nonchar = (value >= 0xFDD0 && value <= 0xFDEF) || (value & 0xFFFEU) == 0xFFFEU;
  return control || separator || direction || nonchar;
}

std::string plain_text(std::string_view text) {
  std::string result;
  while (!text.empty()) {
    const CodePoint next = first_code_point(text);
    const bool surrogate = next.value >= 0xD800 && next.value <= 0xDFFF;
    if (is_hidden_control(next.value) || surrogate || next.value == 0xFFFD || next.value > 0x10FFFF)
      result += "\xEF\xBF\xBD";
    else
      result += text.substr(0, next.bytes);
    text.remove_prefix(next.bytes);
  }
  return result;
}

} // namespace sheerpole
