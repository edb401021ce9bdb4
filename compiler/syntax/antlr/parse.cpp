#include "syntax/parse.hpp"

#include "syntax/antlr/lex.hpp"
#include "syntax/antlr/tree_builder.hpp"

#include <RigParser.h>
#include <antlr4-runtime/BailErrorStrategy.h>
#include <antlr4-runtime/Exceptions.h>

#include <memory>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigParser;

std::unique_ptr<RigParser> make_parser(TokenList& tokens) {
  auto parser = std::make_unique<RigParser>(&tokens);
  parser->removeErrorListeners();
  // The tree builder reads what the rules have labelled; the children would be a second record of the same.
  parser->setBuildParseTree(false);
  return parser;
}

} // namespace

SyntaxTree parse(const SourceText& source, DiagnosticSink& sink) {
  SyntaxTree tree;
  tree.source = source.id();
  SyntaxReport report(sink);
  CodePoints characters(source);
  LexedFile lexed = lex(source, characters);
  tree.comments = std::move(lexed.comments);
  const Span whole{source.id(), 0, static_cast<std::uint32_t>(source.bytes().size())};
  if (lexed.too_deep) {
    report.add(diagnose("too-deep", {{"limit", std::to_string(deepest_nesting)}}).at(*lexed.too_deep));
    tree.statements.push_back(ErrorEntry{whole});
    return tree;
  }
  keep_separating_line_ends(lexed.tokens);
  TokenList tokens(source, characters, std::move(lexed.tokens));
  const auto parser = make_parser(tokens);
  parser->setErrorHandler(std::make_shared<antlr4::BailErrorStrategy>());
  try {
    const RigParser::FileContext* file = parser->file();
    tree.statements = TreeBuilder(tokens, report).file(*file);
  } catch (const antlr4::ParseCancellationException&) {
    report.add(diagnose("unreadable", {{"found", "this"}, {"expected", "something else"}})
                   .at(tokens.span(tokens.at(tokens.index()))));
    tree.statements.push_back(ErrorEntry{whole});
  }
  return tree;
}

} // namespace sheerpole
