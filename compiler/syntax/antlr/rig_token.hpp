#pragma once

#include <antlr4-runtime/Token.h>

#include <cstdint>
#include <string>

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

} // namespace sheerpole
