#include "syntax/antlr/lex.hpp"

#include "base/code_point.hpp"
#include "syntax/antlr/lexer_engine.hpp"
#include "syntax/antlr/token_list.hpp"
#include "syntax/parse.hpp"

#include <RigLexer.h>

#include <algorithm>
#include <string>
#include <utility>

namespace sheerpole {

namespace {

bool continues_character(char c) {
  return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

/// What stands between typographic or single quotes, which take one to three bytes each.
std::string_view between_other_quotes(std::string_view text) {
  std::size_t front = 1;
  while (front < text.size() && continues_character(text[front]))
    ++front;
  text.remove_prefix(front);
  while (!text.empty() && continues_character(text.back()))
    text.remove_suffix(1);
  if (!text.empty())
    text.remove_suffix(1);
  return text;
}

/// The text without its quotes, as it is written.
Text written_text(const TokenList& tokens, const antlr4::Token& token, SyntaxReport& report) {
  Text result;
  result.span = tokens.span(token);
  const std::string_view text = tokens.source().text(result.span);
  if (!text.starts_with('"')) {
    result.text = between_other_quotes(text);
    return result;
  }
  const std::size_t special = text.find_first_of("\"\\", 1);
  if (special == std::string_view::npos || text[special] == '"') {
    result.text = text.substr(1, special == std::string_view::npos ? special : special - 1);
    return result;
  }
  for (std::size_t i = 1; i < text.size() && text[i] != '"'; ++i) {
    if (text[i] == '\\' && i + 1 < text.size() && (text[i + 1] == '"' || text[i + 1] == '\\')) {
      ++i;
    } else if (text[i] == '\\') {
      const std::uint32_t at = result.span.begin + static_cast<std::uint32_t>(i);
      const Span place{result.span.source, at, at + 1};
      report.add(diagnose("stray-backslash").at(place).edit(place, "\\\\", "write \\\\ for one backslash"));
    }
    result.text += text[i];
  }
  return result;
}

using sheerpole_antlr::RigLexer;

/// The token of a word that has a meaning, NAME for any other.
std::size_t word_type(std::u32string_view word) {
  static constexpr std::pair<std::u32string_view, std::size_t> words[] = {
      {U"x", RigLexer::TIMES},
      {U"of", RigLexer::OF},
      {U"use", RigLexer::USE},
      {U"let", RigLexer::LET},
      {U"from", RigLexer::FROM},
      {U"free", RigLexer::FREE},
      {U"ends", RigLexer::ENDS},
      {U"drawn", RigLexer::DRAWN},
      {U"maker", RigLexer::MAKER},
      {U"clamped", RigLexer::CLAMPED},
      {U"assumed", RigLexer::ASSUMED},
      {U"mirrored", RigLexer::MIRRORED},
      {U"measured", RigLexer::MEASURED},
      {U"standard", RigLexer::STANDARD},
      {U"practice", RigLexer::PRACTICE},
      {U"computed", RigLexer::COMPUTED},
      {U"language", RigLexer::LANGUAGE},
      {U"expect", RigLexer::EXPECT},
      {U"on", RigLexer::ON},
  };
  for (const auto& [spelling, type] : words)
    if (spelling.size() == word.size() && spelling.front() == word.front() && spelling == word)
      return type;
  return RigLexer::NAME;
}

/// Whether each closing sign meets the one that it closes, told while the tokens come in.
class Balance {
public:
  /// False when the nesting has become deeper than is read.
  bool add(std::size_t type) {
    if (opens(type)) {
      open_ += static_cast<char>(counterpart(type));
      return open_.size() <= static_cast<std::size_t>(deepest_nesting);
    }
    if (closes(type)) {
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

Text read_text(const TokenList& tokens, const antlr4::Token& token, SyntaxReport& report) {
  Text result = written_text(tokens, token, report);
  result.text = plain_text(result.text);
  return result;
}

LexedFile::LexedFile(const SourceText& source, const CodePoints& characters, std::size_t most)
    : tokens(source, characters) {
  const std::u32string_view text = characters.characters();
  const auto span = [&](std::size_t begin, std::size_t end) {
    return Span{source.id(), characters.byte_offset(begin), characters.byte_offset(end)};
  };
  tokens.tokens().reserve(std::min(text.size() / 4, most) + 2);
  Balance balance;
  std::size_t line = 1;
  std::size_t line_begin = 0;
  for (std::size_t at = 0; at < text.size();) {
    const auto [matched, end] = match_token(text, at);
    const std::size_t begin = std::exchange(at, end);
    std::size_t type = matched;
    if (type == RigLexer::BLANKS)
      continue;
    if (words == most) {
      too_many = span(begin, end);
      break;
    }
    ++words;
    if (type == RigLexer::COMMENT) {
      comments.push_back({span(begin, end)});
      continue;
    }
    if (type == RigLexer::NAME)
      type = word_type(text.substr(begin, end - begin));
    tokens.tokens().push_back(tokens.make(type, begin, end, line, begin - line_begin));
    if (type == RigLexer::NEWLINE) {
      for (std::size_t i = begin; i < end; ++i)
        if (text[i] == U'\n' || (text[i] == U'\r' && (i + 1 == end || text[i + 1] != U'\n'))) {
          ++line;
          line_begin = i + 1;
        }
    } else if (type >= RigLexer::ARROW) {
      refused_spelling = true;
    } else if (!balance.add(type) && !too_deep) {
      too_deep = span(begin, end);
    }
  }
  tokens.tokens().push_back(
      tokens.make(antlr4::Token::EOF, text.size(), text.size(), line, text.size() - line_begin));
  tokens.renumber();
  balanced = balance.pairs_off();
}

void keep_separating_line_ends(TokenList& list) {
  TokenList::Tokens& tokens = list.tokens();
  std::size_t kept = 0;
  std::size_t parentheses = 0;
  for (RigToken* token : tokens) {
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
    tokens[kept++] = token;
  }
  tokens.resize(kept);
  list.renumber();
}

} // namespace sheerpole
