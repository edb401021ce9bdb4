#include "syntax/antlr/token_list.hpp"

#include <antlr4-runtime/RuleContext.h>

#include <algorithm>

namespace sheerpole {

TokenList::TokenList(const SourceText& source, const CodePoints& characters, Tokens tokens)
    : source_(source), characters_(characters), tokens_(std::move(tokens)) {
  renumber();
}

Span TokenList::span(const antlr4::Token& token) const {
  // The stop of an empty token lies one before its start; behind the sum they are equal again.
  return {source_.id(), characters_.byte_offset(token.getStartIndex()),
          characters_.byte_offset(token.getStopIndex() + 1)};
}

void TokenList::insert(std::size_t index, std::size_t type) {
  auto token = std::make_unique<antlr4::CommonToken>(type);
  const std::size_t place = index == 0 ? 0 : tokens_[index - 1]->getStopIndex() + 1;
  token->setStartIndex(place);
  token->setStopIndex(place - 1);
  token->setLine(index == 0 ? 1 : tokens_[index - 1]->getLine());
  tokens_.insert(tokens_.begin() + static_cast<std::ptrdiff_t>(index), std::move(token));
  renumber(index);
}

void TokenList::renumber(std::size_t from) {
  for (std::size_t i = from; i < tokens_.size(); ++i)
    tokens_[i]->setTokenIndex(i);
}

std::size_t TokenList::LA(ssize_t i) {
  const antlr4::Token* token = LT(i);
  return token == nullptr ? 0 : token->getType();
}

antlr4::Token* TokenList::LT(ssize_t k) {
  if (k > 0)
    return tokens_[std::min(next_ + static_cast<std::size_t>(k) - 1, tokens_.size() - 1)].get();
  const auto back = static_cast<std::size_t>(-k);
  return k < 0 && back <= next_ ? tokens_[next_ - back].get() : nullptr;
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

} // namespace sheerpole
