#include "syntax/parse.hpp"

#include "syntax/antlr/lex.hpp"
#include "syntax/antlr/mend_brackets.hpp"
#include "syntax/antlr/mend_spellings.hpp"
#include "syntax/antlr/slip_strategy.hpp"
#include "syntax/antlr/tree_builder.hpp"

#include <RigParser.h>
#include <antlr4-runtime/BailErrorStrategy.h>
#include <antlr4-runtime/Exceptions.h>

#include <memory>
#include <optional>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigParser;

class GeneratedParser {
public:
  GeneratedParser(TokenList& tokens, std::shared_ptr<antlr4::ANTLRErrorStrategy> strategy)
      : parser_(&tokens) {
    parser_.removeErrorListeners();
    // The tree builder reads what the rules have labelled; the children would be a second record of the
    // same.
    parser_.setBuildParseTree(false);
    parser_.setErrorHandler(strategy);
  }
  const RigParser::FileContext& read() { return *parser_.file(); }

private:
  RigParser parser_;
};

/// A file without a slip: nothing is looked for twice, the first thing that is wrong ends the attempt.
std::optional<std::vector<Statement>> read_sound_file(TokenList& tokens, SyntaxReport& report) {
  GeneratedParser parser(tokens, std::make_shared<antlr4::BailErrorStrategy>());
  try {
    return TreeBuilder(tokens, report).file(parser.read());
  } catch (const antlr4::ParseCancellationException&) {
    return std::nullopt;
  }
}

/// A file with slips, from the list of all its tokens.
std::optional<std::vector<Statement>> read_faulty_file(TokenList& tokens, SyntaxReport& report) {
  mend_spellings(tokens, report);
  if (report.full())
    return std::nullopt;
  mend_brackets(tokens, report);
  if (report.full())
    return std::nullopt;
  keep_separating_line_ends(tokens.tokens());
  tokens.renumber();
  SlipFindings findings(tokens, report);
  GeneratedParser parser(tokens, std::make_shared<SlipStrategy>(tokens, findings));
  return TreeBuilder(tokens, report).file(parser.read());
}

} // namespace

SyntaxTree parse(const SourceText& source, DiagnosticSink& sink) {
  SyntaxTree tree;
  tree.source = source.id();
  SyntaxReport report(sink);
  CodePoints characters(source);
  LexedFile lexed = lex(source, characters);
  tree.comments = std::move(lexed.comments);
  std::optional<std::vector<Statement>> statements;
  if (lexed.too_deep) {
    report.add(diagnose("too-deep", {{"limit", std::to_string(deepest_nesting)}}).at(*lexed.too_deep));
  } else {
    if (lexed.balanced && !lexed.refused_spelling) {
      keep_separating_line_ends(lexed.tokens);
      TokenList tokens(source, characters, std::move(lexed.tokens));
      statements = read_sound_file(tokens, report);
    }
    if (!statements) {
      characters.seek(0);
      TokenList tokens(source, characters, lex(source, characters).tokens);
      statements = read_faulty_file(tokens, report);
    }
  }
  if (statements)
    tree.statements = std::move(*statements);
  else
    tree.statements.push_back(
        ErrorEntry{{source.id(), 0, static_cast<std::uint32_t>(source.bytes().size())}});
  return tree;
}

} // namespace sheerpole
