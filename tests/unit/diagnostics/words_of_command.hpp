#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole::test {

/// The words of a command as a shell takes them apart, with double quotes.
inline std::vector<std::string> words_of_command(std::string_view command) {
  std::vector<std::string> words{""};
  bool quoted = false;
  for (const char c : command) {
    if (c == '"')
      quoted = !quoted;
    else if (c == ' ' && !quoted)
      words.emplace_back();
    else
      words.back() += c;
  }
  return words;
}

} // namespace sheerpole::test
