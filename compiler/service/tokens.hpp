#pragma once

#include "service/open_boat.hpp"

#include <vector>

namespace sheerpole::service {

/// What a word is to the reader of a text; the names are those of LSP 3.17 where it has one.
enum class TokenSort {
  keyword,
  kind,     ///< "type"
  property, ///< "property"
  variable, ///< a `let`
  point,    ///< a point of the boat
  part,     ///< any other thing that is declared
  choice,   ///< "enumMember": a word that a property takes, a side, an end
  unit,
  source, ///< "modifier": measured, drawn and the like
  number,
  string,
  comment,
  sign ///< "operator"
};

/// The name that LSP gives it.
std::string_view lsp_name(TokenSort sort);
inline constexpr int token_sorts = static_cast<int>(TokenSort::sign) + 1;

struct Token {
  Span span; ///< within one line
  TokenSort sort = TokenSort::keyword;
  bool declared_here = false;
};

/// Every word of a file but brackets, colons and commas, in its order. What a name is told by what it
/// stands for; in a text with slips by its place.
std::vector<Token> tokens(const OpenBoat& boat, SourceId source);

} // namespace sheerpole::service
