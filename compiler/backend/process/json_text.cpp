#include "backend/process/json_text.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// The deepest nesting that the brackets can come to. Looked at before anything is kept, since a level
/// takes one byte to write and many to hold.
int depth_of(std::string_view text) {
  int depth = 0;
  int deepest = 0;
  bool in_string = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (in_string) {
      if (c == '\\')
        ++i;
      in_string = c != '"';
    } else if (c == '"') {
      in_string = true;
    } else if (c == '[' || c == '{') {
      deepest = std::max(deepest, ++depth);
    } else if (c == ']' || c == '}') {
      --depth;
    }
  }
  return deepest;
}

/// `line 3, column 7`
std::string place_of(std::string_view text, std::size_t byte) {
  const std::string_view before = text.substr(0, std::min(text.size(), byte > 0 ? byte - 1 : 0));
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const std::size_t start = before.rfind('\n') + 1; // npos + 1 is 0
  return "line " + std::to_string(line) + ", column " + std::to_string(before.size() - start + 1);
}

} // namespace

Result<nlohmann::json, std::string> read_json(std::string_view text) {
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
    return std::string("it is empty");
  if (depth_of(text) > deepest_json)
    return "it is nested more than " + std::to_string(deepest_json) + " deep";
  try {
    return nlohmann::json::parse(text);
  } catch (const nlohmann::json::parse_error& error) {
    return "it breaks off or goes astray at " + place_of(text, error.byte);
  }
}

} // namespace sheerpole
