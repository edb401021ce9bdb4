#include "base/code_point.hpp"

#include <algorithm>
#include <array>
#include <iterator>

namespace sheerpole {

namespace {

struct Range {
  char32_t first;
  char32_t last;
};

// The blocks that matter of Unicode's EastAsianWidth.txt (classes W and F) and of the combining marks and
// zero-width signs (general categories Mn and Cf). Blocks, not every assigned code point: from memory of
// Unicode 15.
constexpr std::array wide_ranges{
    Range{0x1100, 0x115F},   Range{0x2E80, 0x303E},   Range{0x3041, 0x33FF},   Range{0x3400, 0x4DBF},
    Range{0x4E00, 0xA4CF},   Range{0xA960, 0xA97F},   Range{0xAC00, 0xD7A3},   Range{0xF900, 0xFAFF},
    Range{0xFE30, 0xFE6F},   Range{0xFF01, 0xFF60},   Range{0xFFE0, 0xFFE6},   Range{0x1F300, 0x1F64F},
    Range{0x1F680, 0x1F6FF}, Range{0x1F900, 0x1F9FF}, Range{0x20000, 0x3FFFD},
};
constexpr std::array narrowest_ranges{
    Range{0x0300, 0x036F}, Range{0x0483, 0x0489}, Range{0x200B, 0x200F}, Range{0x202A, 0x202E},
    Range{0x2060, 0x2064}, Range{0x20D0, 0x20F0}, Range{0x302A, 0x302D}, Range{0xFE00, 0xFE0F},
    Range{0xFE20, 0xFE2F}, Range{0xFEFF, 0xFEFF},
};

template <class Ranges>
bool within(const Ranges& ranges, char32_t value) {
  return std::any_of(std::begin(ranges), std::end(ranges),
                     [value](Range range) { return value >= range.first && value <= range.last; });
}

} // namespace

CodePoint first_code_point(std::string_view text) {
  const auto at = [text](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = at(0);
  if (lead < 0x80)
    return {lead, 1, 1};
  const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC2 ? 2 : 0;
  if (length == 0 || lead > 0xF4 || length > text.size())
    return {0xFFFD, 1, 1};
  char32_t value = lead & (0xFFu >> (length + 1));
  for (std::size_t i = 1; i < length; ++i) {
    if ((at(i) & 0xC0) != 0x80)
      return {0xFFFD, 1, 1};
    value = (value << 6) | (at(i) & 0x3Fu);
  }
  if (within(narrowest_ranges, value))
    return {value, length, 0};
  return {value, length, within(wide_ranges, value) ? std::size_t{2} : std::size_t{1}};
}

std::string utf8_of(char32_t code_point) {
  if (code_point < 0x80)
    return {static_cast<char>(code_point)};
  const int more = code_point < 0x800 ? 1 : code_point < 0x10000 ? 2 : 3;
  std::string bytes;
  for (int i = more; i >= 0; --i) {
    const char32_t bits = code_point >> (6 * i);
    // The first byte begins with as many ones as there are bytes.
    bytes +=
        static_cast<char>(i == more ? ((0xF00u >> (more + 1)) & 0xFFu) | bits : 0x80u | (bits & 0x3Fu));
  }
  return bytes;
}

std::size_t screen_columns(std::string_view text) {
  std::size_t columns = 0;
  while (!text.empty()) {
    const CodePoint next = first_code_point(text);
    columns += next.columns;
    text.remove_prefix(next.bytes);
  }
  return columns;
}

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

std::vector<std::string> wrap_text(std::string_view text, std::size_t width) {
  std::vector<std::string> lines(1);
  std::size_t used = 0;
  std::size_t i = 0;
  while (i < text.size()) {
    if (text[i] == ' ' || text[i] == '\n') {
      ++i;
      continue;
    }
    const std::size_t end = std::min(text.find_first_of(" \n", i), text.size());
    const std::string_view word = text.substr(i, end - i);
    const std::size_t columns = screen_columns(word);
    if (used > 0 && used + 1 + columns > width) {
      lines.emplace_back();
      used = 0;
    }
    if (used > 0) {
      lines.back() += ' ';
      ++used;
    }
    lines.back() += word;
    used += columns;
    i = end;
  }
  return lines;
}

} // namespace sheerpole
