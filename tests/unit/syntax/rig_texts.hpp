#pragma once

#include "source/file_reader.hpp"
#include "unit/syntax/parsed_text.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole::syntax_test {

/// A text that can be read, and the file it was found in.
struct RigText {
  std::string file;
  std::string text;
};

/// The parts of `page` between `open` and the next `close`.
inline std::vector<std::string> parts_between(const std::string& page, const std::string& open,
                                              const std::string& close) {
  std::vector<std::string> result;
  std::size_t at = page.find(open);
  while (at != std::string::npos) {
    const std::size_t begin = at + open.size();
    const std::size_t end = page.find(close, begin);
    if (end == std::string::npos)
      break;
    result.push_back(page.substr(begin, end - begin));
    at = page.find(open, end + close.size());
  }
  return result;
}

/// What `"…"` at `at` stands for; moves behind it. Nothing when it holds an escape of another kind.
inline std::optional<std::string> take_literal(std::string_view code, std::size_t& at) {
  std::string text;
  bool understood = true;
  for (++at; at < code.size() && code[at] != '"'; ++at) {
    if (code[at] != '\\') {
      text += code[at];
      continue;
    }
    switch (code[++at]) {
    case 'n':
      text += '\n';
      break;
    case 't':
      text += '\t';
      break;
    case 'r':
      text += '\r';
      break;
    case '"':
    case '\\':
      text += code[at];
      break;
    default:
      understood = false;
    }
  }
  ++at;
  return understood ? std::optional(text) : std::nullopt;
}

/// The texts in C++: raw literals, and plain ones with those that follow them directly.
inline std::vector<std::string> literals_of(const std::string& code) {
  std::vector<std::string> result = parts_between(code, "R\"(", ")\"");
  std::optional<std::string> text;
  for (std::size_t at = code.find('"'); at < code.size();) {
    const std::optional<std::string> more = take_literal(code, at);
    text = text && more ? std::optional(*text + *more) : more;
    const std::size_t next = code.find('"', std::min(at, code.size()));
    const std::size_t word = code.find_first_not_of(" \n", std::min(at, code.size()));
    if (next != word || next == std::string::npos) {
      if (text)
        result.push_back(*text);
      text = std::string();
    }
    at = next;
  }
  return result;
}

/// Every text of the project that can be read as a rig: the rig files, and the pieces of rig files in pages
/// and in C++, whatever is there on the day. In the order of their paths.
inline std::vector<RigText> all_rig_texts() {
  const std::filesystem::path project = std::filesystem::path(SHEERPOLE_EXAMPLES_DIR).parent_path();
  std::vector<std::filesystem::path> paths;
  for (const char* folder : {"examples", "tests", "docs", "compiler/diagnostics"})
    for (const auto& entry : std::filesystem::recursive_directory_iterator(project / folder))
      if (entry.is_regular_file())
        paths.push_back(entry.path());
  paths.push_back(project / "README.md");
  std::sort(paths.begin(), paths.end());

  std::vector<RigText> result;
  for (const std::filesystem::path& path : paths) {
    std::ifstream stream(path, std::ios::binary);
    const std::string page{std::istreambuf_iterator<char>(stream), {}};
    std::vector<std::string> texts;
    if (path.extension() == ".rig")
      texts = {page};
    else if (path.extension() == ".cpp" || path.extension() == ".hpp")
      texts = literals_of(page);
    else if (path.extension() == ".md")
      texts = parts_between(page, "\n```\n", "\n```");
    for (std::string& text : texts) {
      // A rig of one line is a phrase from a test, not worth its time.
      if (text.find('\n') == std::string::npos || first_invalid_utf8(text) != std::string::npos)
        continue;
      const ParsedText parsed(text);
      if (parsed.findings.empty() && !parsed.tree.statements.empty())
        result.push_back({path.lexically_relative(project).generic_string(), std::move(text)});
    }
  }
  return result;
}

} // namespace sheerpole::syntax_test
