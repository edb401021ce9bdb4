#pragma once

#include "diagnostics/sink.hpp"
#include "source/source_text.hpp"
#include "syntax/syntax_tree.hpp"

#include <cstddef>

namespace sheerpole {

/// Deepest nesting of braces and parentheses that is read.
inline constexpr int deepest_nesting = 64;

/// Longest line that is read, in bytes. Nobody reads a line that is longer; every place in a line is found
/// by counting from its beginning.
inline constexpr std::size_t longest_line_bytes = 4'000;

/// Most words, signs and comments that are read of all files of a rig together. Memory grows with them. A
/// boat with every part spelt out has some ten thousand.
inline constexpr std::size_t most_words = 1'000'000;

/// Reads one file. Mistakes go to the sink, several per file; the tree always exists. `words_left` is what
/// the files before this one have left of `most_words`.
SyntaxTree parse(const SourceText& source, DiagnosticSink& sink, std::size_t words_left = most_words);

} // namespace sheerpole
