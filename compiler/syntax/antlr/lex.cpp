#include "syntax/antlr/lex.hpp"

#include "syntax/parse.hpp"

#include <RigLexer.h>

#include <string>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigLexer;

/// The sign that closes what this one opens, or nothing.
std::size_t closing_of(std::size_t type) {
  switch (type) {
  case RigLexer::LBRACE:
    return RigLexer::RBRACE;
  case RigLexer::LPAREN:
    return RigLexer::RPAREN;
  case RigLexer::LBRACKET:
    return RigLexer::RBRACKET;
  default:
    return 0;
  }
}

/// Whether each closing sign meets the one that it closes, told while the tokens come in.
class Balance {
public:
  /// False when the nesting has become deeper than is read.
  bool add(std::size_t type) {
    if (const std::size_t closing = closing_of(type); closing != 0) {
      open_ += static_cast<char>(closing);
      return open_.size() <= static_cast<std::size_t>(deepest_nesting);
    }
    if (type == RigLexer::RBRACE || type == RigLexer::RPAREN || type == RigLexer::RBRACKET) {
      if (open_.empty() || static_cast<std::size_t>(open_.back()) != type)
        sound_ = false;
      else
        open_.pop_back();
    }
    return true;
  }
  bool pairs_off() const { return sound_ && open_.empty(); }

private:
  std::string open_; ///< the closing signs that are due, innermost last
  bool sound_ = true;
};

} // namespace

LexedFile lex(const SourceText& source, CodePoints& characters) {
  LexedFile result;
  result.tokens.reserve(characters.size() / 4 + 2);
  RigLexer lexer(&characters);
  lexer.removeErrorListeners();
  Balance balance;
  for (;;) {
    std::unique_ptr<antlr4::CommonToken> token(
        static_cast<antlr4::CommonToken*>(lexer.nextToken().release()));
    const std::size_t type = token->getType();
    if (type == RigLexer::COMMENT) {
      result.comments.push_back({{source.id(), characters.byte_offset(token->getStartIndex()),
                                  characters.byte_offset(token->getStopIndex() + 1)}});
      continue;
    }
    if (type >= RigLexer::ARROW && type != antlr4::Token::EOF)
      result.refused_spelling = true;
    if (!balance.add(type) && !result.too_deep)
      result.too_deep = Span{source.id(), characters.byte_offset(token->getStartIndex()),
                             characters.byte_offset(token->getStopIndex() + 1)};
    result.tokens.push_back(std::move(token));
    if (type == antlr4::Token::EOF)
      break;
  }
  result.balanced = balance.pairs_off();
  return result;
}

void keep_separating_line_ends(TokenList::Tokens& tokens) {
  std::size_t kept = 0;
  std::size_t parentheses = 0;
  for (auto& token : tokens) {
    switch (token->getType()) {
    case RigLexer::NEWLINE:
      if (parentheses > 0 || kept == 0 || tokens[kept - 1]->getType() == RigLexer::NEWLINE ||
          tokens[kept - 1]->getType() == RigLexer::LBRACE)
        continue;
      break;
    case RigLexer::LPAREN:
    case RigLexer::LBRACKET:
      ++parentheses;
      break;
    case RigLexer::RPAREN:
    case RigLexer::RBRACKET:
      --parentheses;
      break;
    case RigLexer::LBRACE:
    case RigLexer::RBRACE:
    case antlr4::Token::EOF:
      if (kept > 0 && tokens[kept - 1]->getType() == RigLexer::NEWLINE)
        --kept;
      break;
    default:
      break;
    }
    if (&tokens[kept] != &token)
      tokens[kept] = std::move(token);
    ++kept;
  }
  tokens.resize(kept);
}

} // namespace sheerpole
