#include "base/wrap_text.hpp"

#include "base/code_point.hpp"

#include <algorithm>

namespace sheerpole {

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
