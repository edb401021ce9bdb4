#pragma once

#include "syntax/antlr/code_points.hpp"

#include <antlr4-runtime/CommonToken.h>
#include <antlr4-runtime/TokenStream.h>

#include <cstddef>
#include <memory>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// The words and signs of one file in their order, closed by an end mark, as the generated parser reads
/// them. Only what the parser is to see is in the list, so that nothing has to be skipped while reading.
/// Mends may insert and remove signs.
class TokenList final : public antlr4::TokenStream {
public:
  using Tokens = std::vector<std::unique_ptr<antlr4::CommonToken>>;

  /// `tokens` must end with the end mark.
  TokenList(const SourceText& source, const CodePoints& characters, Tokens tokens);

  Span span(const antlr4::Token& token) const;
  std::string_view text(const antlr4::Token& token) const { return source_.text(span(token)); }
  const SourceText& source() const { return source_; }

  std::size_t count() const { return tokens_.size(); }
  antlr4::CommonToken& at(std::size_t index) const { return *tokens_[std::min(index, tokens_.size() - 1)]; }
  std::size_t type_at(std::size_t index) const { return at(index).getType(); }
  /// Puts a sign without text in front of the token at `index`, at the end of the token before it.
  void insert(std::size_t index, std::size_t type);
  /// A line on which something was left out after it was reported: what the parser says of it is no news.
  void doubt(const antlr4::Token& token) { doubtful_lines_.insert(token.getLine()); }
  bool in_doubt(const antlr4::Token& token) const { return doubtful_lines_.contains(token.getLine()); }
  /// Takes the list apart or puts it together again after a pass over all tokens.
  Tokens& tokens() { return tokens_; }
  /// Numbers the tokens by their place in the list.
  void renumber(std::size_t from = 0);

  void consume() override { next_ = std::min(next_ + 1, tokens_.size() - 1); }
  std::size_t LA(ssize_t i) override;
  antlr4::Token* LT(ssize_t k) override;
  antlr4::Token* get(std::size_t index) const override { return tokens_[index].get(); }
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
  Tokens tokens_;
  std::set<std::size_t> doubtful_lines_;
  std::size_t next_ = 0;
};

} // namespace sheerpole
