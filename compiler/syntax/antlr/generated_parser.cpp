#include "syntax/antlr/generated_parser.hpp"

#include "syntax/antlr/lex.hpp"
#include "syntax/parse.hpp"

#include <RigParser.h>
#include <antlr4-runtime/BaseErrorListener.h>
#include <antlr4-runtime/atn/ATN.h>
#include <antlr4-runtime/atn/ATNState.h>
#include <antlr4-runtime/atn/ParserATNSimulator.h>
#include <antlr4-runtime/atn/PredictionContext.h>
#include <antlr4-runtime/atn/PredictionMode.h>
#include <antlr4-runtime/dfa/DFA.h>

#include <vector>

namespace sheerpole {

namespace {

/// What parsers of one thread have learnt of the grammar.
struct Learnt {
  explicit Learnt(const antlr4::atn::ATN& network) {
    decisions.reserve(network.getNumberOfDecisions());
    for (std::size_t i = 0; i < network.getNumberOfDecisions(); ++i)
      decisions.emplace_back(network.getDecisionState(i), i);
  }
  std::vector<antlr4::dfa::DFA> decisions;
  antlr4::atn::PredictionContextCache contexts;
};

using sheerpole_antlr::RigParser;

class ReportListener final : public antlr4::BaseErrorListener {
public:
  std::vector<std::string> reports;

  void syntaxError(antlr4::Recognizer*, antlr4::Token*, std::size_t line, std::size_t,
                   const std::string& message, std::exception_ptr) override {
    add("syntax error", line, message);
  }
  void reportAmbiguity(antlr4::Parser* parser, const antlr4::dfa::DFA&, std::size_t start, std::size_t,
                       bool, const antlrcpp::BitSet&, antlr4::atn::ATNConfigSet*) override {
    add("ambiguity", parser->getTokenStream()->get(start)->getLine(), {});
  }
  void reportAttemptingFullContext(antlr4::Parser* parser, const antlr4::dfa::DFA&, std::size_t start,
                                   std::size_t, const antlrcpp::BitSet&,
                                   antlr4::atn::ATNConfigSet*) override {
    add("full context", parser->getTokenStream()->get(start)->getLine(), {});
  }
  void reportContextSensitivity(antlr4::Parser* parser, const antlr4::dfa::DFA&, std::size_t start,
                                std::size_t, std::size_t, antlr4::atn::ATNConfigSet*) override {
    add("context sensitivity", parser->getTokenStream()->get(start)->getLine(), {});
  }

private:
  void add(std::string what, std::size_t line, const std::string& message) {
    reports.push_back(what + " in line " + std::to_string(line) + (message.empty() ? "" : ": " + message));
  }
};

} // namespace

GeneratedParser::GeneratedParser(TokenList& tokens, std::shared_ptr<antlr4::ANTLRErrorStrategy> strategy)
    : RigParser(&tokens) {
  static thread_local Learnt learnt(getATN());
  setInterpreter(new antlr4::atn::ParserATNSimulator(this, getATN(), learnt.decisions, learnt.contexts));
  removeErrorListeners();
  // The tree builder reads what the rules have labelled; the children would be a second record of the
  // same.
  setBuildParseTree(false);
  setErrorHandler(strategy);
}

void prepare_for_threads() {
  const sheerpole_antlr::RigParser parser(nullptr);
  const antlr4::atn::ATN& network = parser.getATN();
  for (antlr4::atn::ATNState* state : network.states)
    if (state != nullptr)
      network.nextTokens(state);
}

std::vector<std::string> prediction_reports(const SourceText& source) {
  CodePoints characters(source);
  LexedFile lexed(source, characters);
  if (!lexed.balanced || lexed.too_deep)
    return {"not a sound file"};
  TokenList& tokens = lexed.tokens;
  keep_separating_line_ends(tokens);
  RigParser parser(&tokens);
  ReportListener listener;
  parser.removeErrorListeners();
  parser.addErrorListener(&listener);
  parser.setBuildParseTree(false);
  parser.getInterpreter<antlr4::atn::ParserATNSimulator>()->setPredictionMode(
      antlr4::atn::PredictionMode::LL_EXACT_AMBIG_DETECTION);
  parser.file();
  // A choice that can not be made on the next token leaves its automaton behind.
  for (const std::string& automaton : parser.getDFAStrings())
    if (!automaton.empty())
      listener.reports.push_back("lookahead by automaton: " + automaton);
  return listener.reports;
}

} // namespace sheerpole
