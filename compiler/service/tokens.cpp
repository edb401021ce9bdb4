#include "service/tokens.hpp"

#include "kinds/kind_row.hpp"
#include "syntax/written_words.hpp"
#include "units/unit.hpp"
#include "wording/language_words.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace sheerpole::service {

namespace {

bool is_source_word(std::string_view word) {
  constexpr std::array words{"measured", "drawn", "maker", "standard", "practice", "assumed", "computed"};
  return std::find(words.begin(), words.end(), word) != words.end();
}

bool is_keyword(std::string_view word) {
  const std::span<const Keyword> all = keywords();
  return std::any_of(all.begin(), all.end(), [&](const Keyword& each) { return each.word == word; });
}

TokenSort sort_of(const Symbol& symbol) {
  if (symbol.kind == Symbol::Kind::let)
    return TokenSort::variable;
  return symbol.kind == Symbol::Kind::point ? TokenSort::point : TokenSort::part;
}

class Sorter {
public:
  Sorter(const OpenBoat& boat, SourceId source)
      : text_(boat.text(source)), names_(boat.names()), words_(written_words(text_)) {}

  std::vector<Token> run() {
    std::vector<Token> result;
    for (std::size_t i = 0; i < words_.size(); ++i)
      if (const std::optional<TokenSort> sort = sort_at(i))
        result.push_back({words_[i].span, *sort, declared_here(words_[i].span)});
    return result;
  }

private:
  std::string_view word(std::size_t i) const { return text_.text(words_[i].span); }
  bool begins_entry(std::size_t i) const {
    return i == 0 || words_[i].line_ends > 0 || words_[i - 1].kind == WordKind::opens_block ||
           words_[i - 1].kind == WordKind::closes_block;
  }
  bool is(std::size_t i, WordKind kind) const { return i < words_.size() && words_[i].kind == kind; }

  bool declared_here(Span span) const {
    if (names_ == nullptr)
      return false;
    const Symbol& symbol = (*names_)[names_->symbol_at(span)];
    return !symbol.poison() && symbol.span.source == span.source && symbol.span.begin == span.begin;
  }

  std::optional<TokenSort> sort_at(std::size_t i) const {
    switch (words_[i].kind) {
    case WordKind::comment:
      return TokenSort::comment;
    case WordKind::number:
      return TokenSort::number;
    case WordKind::sign:
    case WordKind::minus:
      return TokenSort::sign;
    case WordKind::name_or_unit:
    case WordKind::other:
      return sort_of_word(i);
    default:
      return std::nullopt;
    }
  }
  std::optional<TokenSort> sort_of_word(std::size_t i) const {
    const std::string_view text = word(i);
    const char first = text.front();
    if (first == '"')
      return TokenSort::string;
    if (first >= '0' && first <= '9')
      return TokenSort::number;
    if (names_ != nullptr)
      if (const Symbol& symbol = (*names_)[names_->symbol_at(words_[i].span)]; !symbol.poison())
        return sort_of(symbol);
    if (is(i + 1, WordKind::colon))
      return TokenSort::property;
    if (i > 0 && is(i - 1, WordKind::point))
      return TokenSort::choice;
    if (i > 0 && is(i - 1, WordKind::number) && find_unit(text) != nullptr)
      return TokenSort::unit;
    if (is_source_word(text))
      return TokenSort::source;
    if (begins_entry(i) && find_kind(text) != nullptr)
      return TokenSort::kind;
    if (is_keyword(text))
      return TokenSort::keyword;
    if (i > 0 && is(i - 1, WordKind::closes_bracket) && find_unit(text) != nullptr)
      return TokenSort::unit;
    return begins_entry(i) ? TokenSort::part : TokenSort::choice;
  }

  const SourceText& text_;
  const ResolvedTree* names_;
  std::vector<WrittenWord> words_;
};

} // namespace

std::string_view lsp_name(TokenSort sort) {
  switch (sort) {
  case TokenSort::keyword:
    return "keyword";
  case TokenSort::kind:
    return "type";
  case TokenSort::property:
    return "property";
  case TokenSort::variable:
    return "variable";
  case TokenSort::point:
    return "parameter";
  case TokenSort::part:
    return "class";
  case TokenSort::choice:
    return "enumMember";
  case TokenSort::unit:
    return "macro";
  case TokenSort::source:
    return "modifier";
  case TokenSort::number:
    return "number";
  case TokenSort::string:
    return "string";
  case TokenSort::comment:
    return "comment";
  case TokenSort::sign:
    return "operator";
  }
  return "keyword";
}

std::vector<Token> tokens(const OpenBoat& boat, SourceId source) {
  return Sorter(boat, source).run();
}

} // namespace sheerpole::service
