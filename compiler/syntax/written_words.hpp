#pragma once

#include "source/source_text.hpp"

#include <cstddef>
#include <vector>

namespace sheerpole {

/// What a word is to the layout of a text. Names, texts and numbers are one to it but for a number and the
/// unit behind it, which stay as they were written.
enum class WordKind {
  other,         ///< a text, a date, a length in feet and inches, a word with a meaning
  name_or_unit,  ///< `hmpe-9`, `mm`, `kg/m`, `%`
  number,        ///< `11_642`, `7 3/8`; blanks inside belong to it
  opens_block,   ///< `{`
  closes_block,  ///< `}`
  opens_bracket, ///< `(` or `[`
  closes_bracket,
  comma,
  colon,
  point, ///< between a name and its side
  minus, ///< of either kind: of a difference or before a number
  sign,  ///< `=`, `>`, `+`, `*`, `/`, `±` in all its spellings
  comment
};

/// A word, a sign or a comment, and what parts it from the one before.
struct WrittenWord {
  WordKind kind = WordKind::other;
  Span span;                 ///< without blanks round it; a comment is from its # to the end of its line
  std::size_t line_ends = 0; ///< between the word before (or the start of the file) and this one
  bool blank_before = false; ///< there is something, a blank or a line end, between the two
};

/// All words, signs and comments of a file in their order. The text need not be a sound one.
std::vector<WrittenWord> written_words(const SourceText& source);

} // namespace sheerpole
