#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace sheerpole {

/// One code point at the front of a UTF-8 text.
struct CodePoint {
  char32_t value = 0;
  std::size_t bytes = 1; ///< that it takes in the text
  std::size_t columns =
      1; ///< that it takes on a screen: 2 for wide East Asian forms, 0 for combining marks
};

/// The code point with which `text` begins; `text` is not empty. A byte that does not begin valid UTF-8
/// counts as one U+FFFD.
CodePoint first_code_point(std::string_view text);

/// The code point, at most U+10FFFF, as UTF-8.
std::string utf8_of(char32_t code_point);

/// Screen columns of a text without tabs and line ends.
std::size_t screen_columns(std::string_view text);

} // namespace sheerpole
