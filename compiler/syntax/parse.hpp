#pragma once

#include "diagnostics/sink.hpp"
#include "source/source_text.hpp"
#include "syntax/syntax_tree.hpp"

#include <string>
#include <vector>

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

/// Fills in what all parsers share of the grammar and would otherwise fill in at their first need, without
/// a lock that covers it. To be called once before several threads read files at the same time.
void prepare_for_threads();

/// What the generated parser says of its own choices while it reads a sound file: ambiguities, choices that
/// took more than the simple kind of lookahead, and choices that took more than one token at all. The
/// grammar is in order when there is nothing to say. For tests of the grammar.
std::vector<std::string> prediction_reports(const SourceText& source);

} // namespace sheerpole
