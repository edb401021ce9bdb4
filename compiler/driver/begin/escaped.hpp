#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// A text as it stands between the quotes of a rig file; line ends are left out.
inline std::string escaped(std::string_view text) {
  std::string result;
  for (const char c : text) {
    if (c == '"' || c == '\\')
      result += '\\';
    if (c != '\n' && c != '\r')
      result += c;
  }
  return result;
}

} // namespace sheerpole
