#include "syntax/antlr/token_list.hpp"

#include <RigLexer.h>
#include <antlr4-runtime/RuleContext.h>
#include <antlr4-runtime/misc/Interval.h>

namespace sheerpole {

void TokenList::insert(std::size_t index, std::size_t type) {
  RigToken* token = index == 0 ? make(type, 0, 0, 1, 0) : make_behind(*tokens_[index - 1], type);
  tokens_.insert(tokens_.begin() + static_cast<std::ptrdiff_t>(index), token);
  renumber(index);
}

void TokenList::renumber(std::size_t from) {
  for (std::size_t i = from; i < tokens_.size(); ++i)
    tokens_[i]->set_index(i);
}

antlr4::Token* TokenList::LT(ssize_t k) {
  if (k > 0)
    return &at(next_ + static_cast<std::size_t>(k) - 1);
  const auto back = static_cast<std::size_t>(-k);
  return k < 0 && back <= next_ ? tokens_[next_ - back] : nullptr;
}

std::string TokenList::getText(const antlr4::misc::Interval& interval) {
  if (interval.a < 0 || interval.b < interval.a || static_cast<std::size_t>(interval.b) >= tokens_.size())
    return {};
  return getText(get(static_cast<std::size_t>(interval.a)), get(static_cast<std::size_t>(interval.b)));
}

std::string TokenList::getText(antlr4::RuleContext* context) {
  return getText(context->getSourceInterval());
}

std::string TokenList::getText(antlr4::Token* start, antlr4::Token* stop) {
  if (start == nullptr || stop == nullptr)
    return {};
  return std::string(source_.text(cover(span(*start), span(*stop))));
}

namespace {

using sheerpole_antlr::RigLexer;

constexpr std::size_t longest_quoted_text = 40;

/// The text as written, cut short between two characters when it is long.
std::string shortened(std::string_view text) {
  if (text.size() <= longest_quoted_text)
    return std::string(text);
  std::size_t end = longest_quoted_text;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
    --end;
  return std::string(text.substr(0, end)) + "…";
}

} // namespace

std::string describe(const TokenList& tokens, const antlr4::Token& token) {
  const std::string text = shortened(tokens.text(token));
  switch (token.getType()) {
  case antlr4::Token::EOF:
    return "the end of the file";
  case RigLexer::NUMBER:
  case RigLexer::MALFORMED_NUMBER:
    return "the number " + text;
  case RigLexer::LENGTH:
    return "the length " + text;
  case RigLexer::DATE:
    return "the date " + text;
  case RigLexer::STRING:
    return "the text " + text;
  case RigLexer::COMPOUND_UNIT:
    return "the unit " + text;
  case RigLexer::RBRACE:
    return "the closing brace }";
  case RigLexer::LBRACE:
    return "the opening brace {";
  default:
    return (is_word(token.getType()) ? "the word " : "the sign ") + text;
  }
}

bool is_word(std::size_t type) {
  return (type >= RigLexer::LANGUAGE && type <= RigLexer::COMPUTED) || type == RigLexer::NAME;
}

bool begins_value(std::size_t type) {
  switch (type) {
  case RigLexer::NUMBER:
  case RigLexer::MALFORMED_NUMBER:
  case RigLexer::LENGTH:
  case RigLexer::DATE:
  case RigLexer::MINUS:
  case RigLexer::LBRACKET:
    return true;
  default:
    return false;
  }
}

bool ends_line(std::size_t type) {
  return type == RigLexer::NEWLINE || type == RigLexer::RBRACE || type == antlr4::Token::EOF;
}

bool opens(std::size_t type) {
  return type == RigLexer::LBRACE || type == RigLexer::LPAREN || type == RigLexer::LBRACKET;
}

bool closes(std::size_t type) {
  return type == RigLexer::RBRACE || type == RigLexer::RPAREN || type == RigLexer::RBRACKET;
}

std::size_t counterpart(std::size_t type) {
  switch (type) {
  case RigLexer::LBRACE:
    return RigLexer::RBRACE;
  case RigLexer::RBRACE:
    return RigLexer::LBRACE;
  case RigLexer::LPAREN:
    return RigLexer::RPAREN;
  case RigLexer::RPAREN:
    return RigLexer::LPAREN;
  case RigLexer::LBRACKET:
    return RigLexer::RBRACKET;
  default:
    return RigLexer::LBRACKET;
  }
}

std::string sign_text(std::size_t type) {
  switch (type) {
  case RigLexer::LBRACE:
    return "{";
  case RigLexer::RBRACE:
    return "}";
  case RigLexer::LPAREN:
    return "(";
  case RigLexer::RPAREN:
    return ")";
  case RigLexer::LBRACKET:
    return "[";
  default:
    return "]";
  }
}

} // namespace sheerpole
