#pragma once

#include "syntax/antlr/lexer_engine.hpp"

#include <algorithm>
#include <antlr4-runtime/Token.h>
#include <antlr4-runtime/TokenStream.h>
#include <cstddef>
#include <cstdint>
#include <deque>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A word or sign of a rig file as the generated parser sees it: what it is and where, without its text. A
/// file has many, so it is small.
class RigToken final : public antlr4::Token {
public:
  /// Characters [begin, end) of the file; `column` counts from 0.
  RigToken(std::size_t type, std::size_t begin, std::size_t end, std::size_t line, std::size_t column)
      : type_(type), begin_(static_cast<std::uint32_t>(begin)), end_(static_cast<std::uint32_t>(end)),
        line_(static_cast<std::uint32_t>(line)), column_(static_cast<std::uint32_t>(column)) {}

  std::size_t begin() const { return begin_; }
  std::size_t end() const { return end_; }
  void set_type(std::size_t type) { type_ = type; }
  void set_end(std::size_t end) { end_ = static_cast<std::uint32_t>(end); }
  void set_index(std::size_t index) { index_ = static_cast<std::uint32_t>(index); }

  std::size_t getType() const override { return type_; }
  std::size_t getLine() const override { return line_; }
  std::size_t getCharPositionInLine() const override { return column_; }
  std::size_t getChannel() const override { return DEFAULT_CHANNEL; }
  std::size_t getTokenIndex() const override { return index_; }
  std::size_t getStartIndex() const override { return begin_; }
  std::size_t getStopIndex() const override { return static_cast<std::size_t>(end_) - 1; }
  /// The text is in the source, see TokenList::text().
  std::string getText() const override { return {}; }
  antlr4::TokenSource* getTokenSource() const override { return nullptr; }
  antlr4::CharStream* getInputStream() const override { return nullptr; }
  std::string toString() const override { return {}; }

private:
  std::size_t type_;
  std::uint32_t begin_;
  std::uint32_t end_;
  std::uint32_t line_;
  std::uint32_t column_;
  std::uint32_t index_ = 0;
};

/// The words and signs of one file in their order, closed by an end mark, as the generated parser reads
/// them. Only what the parser is to see is in the list, so that nothing has to be skipped while reading.
/// Mends may insert and remove signs; a token stays where it is in memory.
class TokenList final : public antlr4::TokenStream {
public:
  using Tokens = std::vector<RigToken*>;

  TokenList(const SourceText& source, const CodePoints& characters)
      : source_(source), characters_(characters) {}

  const SourceText& source() const { return source_; }
  Span span(const antlr4::Token& token) const {
    const auto& own = static_cast<const RigToken&>(token);
    return {source_.id(), characters_.byte_offset(own.begin()), characters_.byte_offset(own.end())};
  }
  std::string_view text(const antlr4::Token& token) const { return source_.text(span(token)); }

  /// A token that belongs to this list but has no place in it yet.
  RigToken* make(std::size_t type, std::size_t begin, std::size_t end, std::size_t line,
                 std::size_t column) {
    return &storage_.emplace_back(type, begin, end, line, column);
  }
  /// A sign without text directly behind a token.
  RigToken* make_behind(const RigToken& before, std::size_t type) {
    return make(type, before.end(), before.end(), before.getLine(), before.getCharPositionInLine());
  }

  std::size_t count() const { return tokens_.size(); }
  /// The token at this place; beyond the end, the end mark.
  RigToken& at(std::size_t index) const { return *tokens_[std::min(index, tokens_.size() - 1)]; }
  std::size_t type_at(std::size_t index) const { return at(index).getType(); }
  /// The list itself, for passes over all tokens; renumber() has to follow.
  Tokens& tokens() { return tokens_; }
  /// Tells every token its place in the list.
  void renumber(std::size_t from = 0);
  /// Puts a sign without text in front of the token at `index`, directly behind the one before it.
  void insert(std::size_t index, std::size_t type);

  /// Notes that something on the line of this token was left out after it was reported: what the parser
  /// says of the line is no news.
  void doubt(const RigToken& token) { doubtful_lines_.insert(token.getLine()); }
  bool in_doubt(const RigToken& token) const { return doubtful_lines_.contains(token.getLine()); }

  void consume() override { next_ = std::min(next_ + 1, tokens_.size() - 1); }
  std::size_t LA(ssize_t i) override {
    if (i > 0)
      return type_at(next_ + static_cast<std::size_t>(i) - 1);
    const antlr4::Token* token = LT(i);
    return token == nullptr ? 0 : token->getType();
  }
  antlr4::Token* LT(ssize_t k) override;
  antlr4::Token* get(std::size_t index) const override { return tokens_[index]; }
  ssize_t mark() override { return 0; }
  void release(ssize_t) override {}
  std::size_t index() override { return next_; }
  void seek(std::size_t index) override { next_ = std::min(index, tokens_.size() - 1); }
  std::size_t size() override { return tokens_.size(); }
  std::string getSourceName() const override { return source_.name(); }
  antlr4::TokenSource* getTokenSource() const override { return nullptr; }
  std::string getText(const antlr4::misc::Interval& interval) override;
  std::string getText() override { return std::string(source_.bytes()); }
  std::string getText(antlr4::RuleContext* context) override;
  std::string getText(antlr4::Token* start, antlr4::Token* stop) override;

private:
  const SourceText& source_;
  const CodePoints& characters_;
  std::deque<RigToken> storage_;
  Tokens tokens_;
  std::set<std::size_t> doubtful_lines_;
  std::size_t next_ = 0;
};

/// What stands there, as a rigger would say it: "the number 12", "the end of the line", "the sign ,".
std::string describe(const TokenList& tokens, const antlr4::Token& token);

/// Whether a token of this type is a name, or a word that may be one.
bool is_word(std::size_t type);

/// Whether a token of this type begins a value and can not be the next word of a line.
bool begins_value(std::size_t type);

/// Whether the line goes no further: line end, closing brace, end of the file.
bool ends_line(std::size_t type);

/// Whether the type is `{`, `(` or `[`; and whether it is one of their counterparts.
bool opens(std::size_t type);
bool closes(std::size_t type);

/// `{` for `}`, and so on, both ways.
std::size_t counterpart(std::size_t type);

/// The sign itself, for `{`, `}`, `(`, `)`, `[` and `]`.
std::string sign_text(std::size_t type);

} // namespace sheerpole
