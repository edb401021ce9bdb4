#include "driver/reference/markdown.hpp"

namespace sheerpole {

std::string markdown_text(std::string_view text) {
  constexpr std::string_view with_meaning = "\\*<>|[]_";
  std::string result;
  bool code = false;
  for (const char c : text) {
    if (c == '`')
      code = !code;
    // In code only the sign that parts the cells of a table has a meaning.
    if (code ? c == '|' : with_meaning.find(c) != std::string_view::npos)
      result += '\\';
    result += c;
  }
  return result;
}

std::string markdown_code(std::string_view text) {
  if (text.empty())
    return {};
  std::string result = "`";
  for (const char c : text) {
    if (c == '|')
      result += '\\';
    result += c;
  }
  return result + "`";
}

std::string markdown_row(const std::vector<std::string>& cells) {
  std::string result = "|";
  for (const std::string& cell : cells)
    result += cell.empty() ? " |" : " " + cell + " |";
  return result + "\n";
}

std::string markdown_heading_row(const std::vector<std::string>& cells) {
  std::string result = markdown_row(cells) + "|";
  for (std::size_t i = 0; i < cells.size(); ++i)
    result += "---|";
  return result + "\n";
}

} // namespace sheerpole
