#pragma once

#include "syntax/antlr/token_list.hpp"

#include <RigParser.h>

#include <memory>

namespace sheerpole {

/// The generated parser, set up for a token list. What a rule has read belongs to it. Every choice is made
/// on the next token, so the network of the grammar is never asked and is not there (see
/// grammar/README.md).
class GeneratedParser : public sheerpole_antlr::RigParser {
public:
  GeneratedParser(TokenList& tokens, const std::shared_ptr<antlr4::ANTLRErrorStrategy>& strategy)
      : RigParser(&tokens) {
    removeErrorListeners();
    // The tree builder reads what the rules have labelled; the children would be a second record of the
    // same.
    setBuildParseTree(false);
    setErrorHandler(strategy);
  }
  /// Lets go of what was read so far.
  void forget() { getTreeTracker().reset(); }
};

} // namespace sheerpole
