#include "syntax/antlr/read_text.hpp"

#include "base/plain_text.hpp"

namespace sheerpole {

namespace {

bool continues_character(char c) {
  return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

/// What stands between typographic or single quotes, which take one to three bytes each.
std::string_view between_other_quotes(std::string_view text) {
  std::size_t front = 1;
  while (front < text.size() && continues_character(text[front]))
    ++front;
  text.remove_prefix(front);
  while (!text.empty() && continues_character(text.back()))
    text.remove_suffix(1);
  if (!text.empty())
    text.remove_suffix(1);
  return text;
}

/// The text without its quotes, as it is written.
Text written_text(const TokenList& tokens, const antlr4::Token& token, SyntaxReport& report) {
  Text result;
  result.span = tokens.span(token);
  const std::string_view text = tokens.source().text(result.span);
  if (!text.starts_with('"')) {
    result.text = between_other_quotes(text);
    return result;
  }
  const std::size_t special = text.find_first_of("\"\\", 1);
  if (special == std::string_view::npos || text[special] == '"') {
    result.text = text.substr(1, special == std::string_view::npos ? special : special - 1);
    return result;
  }
  for (std::size_t i = 1; i < text.size() && text[i] != '"'; ++i) {
    if (text[i] == '\\' && i + 1 < text.size() && (text[i + 1] == '"' || text[i + 1] == '\\')) {
      ++i;
    } else if (text[i] == '\\') {
      const std::uint32_t at = result.span.begin + static_cast<std::uint32_t>(i);
      const Span place{result.span.source, at, at + 1};
      report.add(diagnose("stray-backslash").at(place).edit(place, "\\\\", "write \\\\ for one backslash"));
    }
    result.text += text[i];
  }
  return result;
}

} // namespace

Text read_text(const TokenList& tokens, const antlr4::Token& token, SyntaxReport& report) {
  Text result = written_text(tokens, token, report);
  result.text = plain_text(result.text);
  return result;
}

} // namespace sheerpole
