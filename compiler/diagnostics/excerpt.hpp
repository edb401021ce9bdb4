#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace sheerpole {

/// One line of a file made fit to print, and where a spot of it stands on the screen.
struct Excerpt {
  std::string text;           ///< tabs as blanks, cropped around the spot when too long, no trailing blanks
  std::size_t mark_begin = 0; ///< screen columns before the spot
  std::size_t mark_width = 1; ///< at least 1; a spot that is cropped too ends with the text
};

/// The line with the spot at the bytes [begin, end) of it, in at most `width` screen columns. `begin` may
/// be the length of the line: the spot is then behind its last sign.
Excerpt excerpt(std::string_view line, std::size_t begin, std::size_t end, std::size_t width);

/// The text with every sign replaced by U+FFFD that would move the cursor, change colours or turn the
/// direction of writing: a rig file from a stranger shall not write on the screen what it likes. Line ends
/// become blanks.
std::string printable(std::string_view text);

} // namespace sheerpole
