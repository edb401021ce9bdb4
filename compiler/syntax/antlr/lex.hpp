#pragma once

#include "syntax/antlr/slip_findings.hpp"
#include "syntax/antlr/token_list.hpp"
#include "syntax/parse.hpp"
#include "syntax/syntax_tree.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// The text of a string token without its quotes, `\"` and `\\` resolved. A backslash before anything else
/// is reported and kept. The closing quote may be missing. Controls and what is no character come out as
/// U+FFFD, so that no paper and no screen has to guard itself against them.
Text read_text(const TokenList& tokens, const antlr4::Token& token, SyntaxReport& report);

/// A file taken apart into words and signs, before any of them is mended or dropped.
struct LexedFile {
  /// Stops behind `most` words, signs and comments.
  LexedFile(const SourceText& source, const CodePoints& characters, std::size_t most = most_words);

  TokenList tokens; ///< all but blanks and comments, line ends included; the end mark is the last
  std::vector<Comment> comments;
  bool refused_spelling = false; ///< one of the tokens is there to be refused
  bool balanced = true;          ///< braces, parentheses and brackets pair off
  std::optional<Span> too_deep;  ///< the first brace or parenthesis that is nested deeper than is read
  std::optional<Span> too_many;  ///< the first word that is one too many; what follows it was not looked at
  std::size_t words = 0;         ///< words, signs and comments, line ends among them
};

/// Drops the line ends that end nothing: those inside parentheses and brackets, behind an opening brace,
/// before a brace of either kind, at the start and at the end of the file. Braces and parentheses must pair
/// off.
void keep_separating_line_ends(TokenList& tokens);

} // namespace sheerpole
