#include "syntax/parse.hpp"

#include "syntax/antlr/generated_parser.hpp"
#include "syntax/antlr/lex.hpp"
#include "syntax/antlr/mend_tokens.hpp"
#include "syntax/antlr/slip_strategy.hpp"
#include "syntax/antlr/tree_builder.hpp"

#include <antlr4-runtime/BailErrorStrategy.h>
#include <antlr4-runtime/Exceptions.h>

#include <algorithm>
#include <memory>
#include <optional>
#include <string_view>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigParser;

/// A file without a slip: nothing is looked for twice, the first thing that is wrong ends the attempt. Goes
/// through the rule `file` statement by statement, so that what was read of one makes room for the next.
std::optional<std::vector<Statement>> read_sound_file(TokenList& tokens, SyntaxReport& report) {
  GeneratedParser parser(tokens, std::make_shared<antlr4::BailErrorStrategy>());
  TreeBuilder builder(tokens, report);
  std::vector<Statement> statements;
  try {
    while (tokens.LA(1) != antlr4::Token::EOF) {
      statements.push_back(builder.statement(*parser.statement()));
      parser.forget();
      if (tokens.LA(1) == RigParser::NEWLINE)
        tokens.consume();
      else if (tokens.LA(1) != antlr4::Token::EOF)
        return std::nullopt;
    }
  } catch (const antlr4::ParseCancellationException&) {
    return std::nullopt;
  }
  return statements;
}

/// A file with slips, from the list of all its tokens.
std::optional<std::vector<Statement>> read_faulty_file(TokenList& tokens, SyntaxReport& report) {
  mend_spellings(tokens, report);
  if (report.full())
    return std::nullopt;
  mend_brackets(tokens, report);
  if (report.full())
    return std::nullopt;
  keep_separating_line_ends(tokens);
  SlipFindings findings(tokens, report);
  GeneratedParser parser(tokens, std::make_shared<SlipStrategy>(tokens, findings));
  try {
    return TreeBuilder(tokens, report).file(*parser.file());
  } catch (const antlr4::ParseCancellationException&) { // too many findings
    return std::nullopt;
  }
}

/// The beginning of the first line that is longer than is read.
std::optional<Span> overlong_line(const SourceText& source) {
  const std::string_view bytes = source.bytes();
  for (std::size_t begin = 0; begin < bytes.size();) {
    const std::size_t end = std::min(bytes.find_first_of("\r\n", begin), bytes.size());
    if (end - begin > longest_line_bytes) {
      const auto at = static_cast<std::uint32_t>(begin);
      return Span{source.id(), at, at};
    }
    begin = end + 1;
  }
  return std::nullopt;
}

/// Stands for a file of which nothing could be read.
ErrorEntry whole_file(const SourceText& source) {
  return {{source.id(), 0, static_cast<std::uint32_t>(source.bytes().size())}};
}

} // namespace

SyntaxTree parse(const SourceText& source, DiagnosticSink& sink, std::size_t words_left) {
  SyntaxTree tree;
  tree.source = source.id();
  SyntaxReport report(sink);
  if (const auto line = overlong_line(source)) {
    report.add(diagnose("line-too-long", {{"limit", std::to_string(longest_line_bytes)}}).at(*line));
    tree.statements.push_back(whole_file(source));
    return tree;
  }
  const CodePoints characters(source);
  LexedFile lexed(source, characters, words_left);
  tree.comments = std::move(lexed.comments);
  tree.words = lexed.words;
  std::optional<std::vector<Statement>> statements;
  if (lexed.too_many) {
    report.add(diagnose("too-many-words", {{"limit", std::to_string(most_words)}}).at(*lexed.too_many));
  } else if (lexed.too_deep) {
    report.add(diagnose("too-deep", {{"limit", std::to_string(deepest_nesting)}}).at(*lexed.too_deep));
  } else {
    if (lexed.balanced && !lexed.refused_spelling) {
      keep_separating_line_ends(lexed.tokens);
      statements = read_sound_file(lexed.tokens, report);
    }
    if (!statements) {
      LexedFile again(source, characters, words_left);
      statements = read_faulty_file(again.tokens, report);
    }
  }
  if (statements)
    tree.statements = std::move(*statements);
  else
    tree.statements.push_back(whole_file(source));
  return tree;
}

} // namespace sheerpole
