#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

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

/// True for what is no sign to be read but does something to whatever shows it, or is no character at all:
/// controls but for tab and line feed, the separators of lines and paragraphs, what turns the direction of
/// writing by force (Unicode Standard Annex 9, table 1), and noncharacters (Unicode 15.0, section 23.7).
bool is_hidden_control(char32_t value);

/// The text with U+FFFD for each of these and for each byte that is no UTF-8.
std::string plain_text(std::string_view text);

/// Breaks a text at blanks into lines of at most `width` screen columns. A word longer than that stands
/// alone on its line, uncut. Runs of blanks become one blank; an empty text gives one empty line.
std::vector<std::string> wrap_text(std::string_view text, std::size_t width);

} // namespace sheerpole
