#pragma once

#include "syntax/written_words.hpp"

#include <cstddef>
#include <vector>

namespace sheerpole {

/// Where the lines of a tidy text end, and how deep in blocks they stand.
struct LineBreak {
  std::size_t line_ends =
      0; ///< before the word: 0 on one line with the one before, 2 with a blank line between
  std::size_t depth = 0; ///< of a line that begins with the word: blocks that are spread over lines
};

/// One for each word. The lines are the author's but for these: `{` stands on the line of its head; a block
/// that is not on one line begins and ends its own lines; two blank lines and more become one, and there is
/// none at the edges of the file, of a block and of a bracket. Braces must pair off.
std::vector<LineBreak> line_breaks(const std::vector<WrittenWord>& words);

} // namespace sheerpole
