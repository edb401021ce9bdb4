#include "syntax/antlr/token_list.hpp"

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

} // namespace sheerpole
