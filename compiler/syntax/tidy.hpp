#pragma once

#include "diagnostics/sink.hpp"
#include "source/source_text.hpp"
#include "syntax/written_words.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// The same text laid out in the way of the language: indentation, blanks, blank lines, comments in
/// columns. No word, sign or comment is changed, added, dropped or moved past another, and the tree is the
/// same. Tidying twice is tidying once. Lines end as the first one of the file does, and the last one ends
/// too.
///
/// Nothing when the text can not be read; what is wrong with it goes to the sink.
std::optional<std::string> tidy(const SourceText& source, DiagnosticSink& sink);

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

/// For each word, whether a blank parts it from the word before when both stand on one line.
std::vector<bool> word_gaps(const std::vector<WrittenWord>& words);

} // namespace sheerpole
