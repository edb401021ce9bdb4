#pragma once

#include "syntax/antlr/token_list.hpp"

#include <RigParser.h>

#include <memory>

namespace sheerpole {

/// The generated parser, set up for a token list. What a rule has read belongs to it. What it learns of the
/// grammar while it reads belongs to the thread: the generated class keeps that once for the whole program,
/// and looks at some of it without a lock.
class GeneratedParser : public sheerpole_antlr::RigParser {
public:
  GeneratedParser(TokenList& tokens, std::shared_ptr<antlr4::ANTLRErrorStrategy> strategy);
  /// Lets go of what was read so far.
  void forget() { getTreeTracker().reset(); }
};

} // namespace sheerpole
