#include "syntax/written_words.hpp"

#include "syntax/antlr/lex.hpp"

#include <RigLexer.h>

#include <string_view>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigLexer;

WordKind kind_of(std::size_t type) {
  switch (type) {
  case RigLexer::NAME:
  case RigLexer::COMPOUND_UNIT:
  case RigLexer::PERCENT:
    return WordKind::name_or_unit;
  case RigLexer::NUMBER:
    return WordKind::number;
  case RigLexer::LBRACE:
    return WordKind::opens_block;
  case RigLexer::RBRACE:
    return WordKind::closes_block;
  case RigLexer::LPAREN:
  case RigLexer::LBRACKET:
    return WordKind::opens_bracket;
  case RigLexer::RPAREN:
  case RigLexer::RBRACKET:
    return WordKind::closes_bracket;
  case RigLexer::COMMA:
    return WordKind::comma;
  case RigLexer::COLON:
    return WordKind::colon;
  case RigLexer::DOT:
    return WordKind::point;
  case RigLexer::MINUS:
    return WordKind::minus;
  case RigLexer::EQUALS:
  case RigLexer::GREATER:
  case RigLexer::PLUS:
  case RigLexer::STAR:
  case RigLexer::SLASH:
  case RigLexer::TOLERANCE:
    return WordKind::sign;
  default:
    return WordKind::other;
  }
}

/// A carriage return and the line feed behind it are one line end.
std::size_t count_line_ends(std::string_view text) {
  std::size_t count = 0;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.size() || text[i + 1] != '\n')))
      ++count;
  return count;
}

} // namespace

std::vector<WrittenWord> written_words(const SourceText& source) {
  const CodePoints characters(source);
  LexedFile lexed(source, characters);
  std::vector<WrittenWord> words;
  words.reserve(lexed.tokens.count() + lexed.comments.size());
  std::size_t line_ends = 0;
  const auto add = [&](WordKind kind, Span span) {
    const std::uint32_t end_before = words.empty() ? 0 : words.back().span.end;
    words.push_back({kind, span, line_ends, span.begin > end_before});
    line_ends = 0;
  };
  auto comment = lexed.comments.begin();
  for (std::size_t i = 0; i < lexed.tokens.count(); ++i) {
    const RigToken& token = lexed.tokens.at(i);
    const Span span = lexed.tokens.span(token);
    for (; comment != lexed.comments.end() && comment->span.begin < span.begin; ++comment)
      add(WordKind::comment, comment->span);
    if (token.getType() == RigLexer::NEWLINE)
      line_ends += count_line_ends(source.text(span));
    else if (token.getType() != antlr4::Token::EOF)
      add(kind_of(token.getType()), span);
  }
  return words;
}

} // namespace sheerpole
