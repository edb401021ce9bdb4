#include "syntax/antlr/generated_parser.hpp"

#include "syntax/prepare_for_threads.hpp"

#include <antlr4-runtime/atn/ATN.h>
#include <antlr4-runtime/atn/ATNState.h>
#include <antlr4-runtime/atn/ParserATNSimulator.h>
#include <antlr4-runtime/atn/PredictionContext.h>
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

} // namespace sheerpole
