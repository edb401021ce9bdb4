#include "syntax/antlr/mend_tokens.hpp"

#include "base/code_point.hpp"
#include "syntax/antlr/token_list.hpp"

#include <RigLexer.h>
#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigLexer;

/// A character that has no place in a rig file, and what to write instead.
struct OddCharacter {
  std::string_view character;
  std::size_t meant; ///< the token to read it as, or 0 to leave it out
  std::string_view replacement;
};

constexpr OddCharacter odd_characters[] = {
    {"\u2212", RigLexer::MINUS, "-"},
    {"\u2010", RigLexer::MINUS, "-"},
    {"\u2011", RigLexer::MINUS, "-"},
    {"\u2013", RigLexer::MINUS, "-"},
    {"\u2014", RigLexer::MINUS, "-"},
    {"\u00D7", RigLexer::TIMES, "x"},
    {"\u00F7", RigLexer::SLASH, "/"},
    {"\u2044", RigLexer::SLASH, "/"},
    {"\u00B7", RigLexer::STAR, "*"},
    {"\u203A", RigLexer::GREATER, ">"},
    {"\u00B0", 0, " deg"},
    {"\u200B", 0, ""},
    {"\uFEFF", 0, ""},
    {"\u00AD", 0, ""},
    {"\u2002", 0, " "},
    {"\u2003", 0, " "},
    {"\u2007", 0, " "},
    {"\u200A", 0, " "},
    {"\u3000", 0, " "},
};

const OddCharacter* find_odd_character(std::string_view text) {
  const auto found = std::find_if(std::begin(odd_characters), std::end(odd_characters),
                                  [text](const OddCharacter& each) { return each.character == text; });
  return found == std::end(odd_characters) ? nullptr : found;
}

std::string_view trim_front(std::string_view text) {
  text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
  return text;
}

class SpellingMender {
public:
  SpellingMender(TokenList& tokens, SyntaxReport& report) : tokens_(tokens), report_(report) {}

  void run() {
    for (; index_ + 1 < tokens_.count() && !report_.full(); ++index_) {
      follow(token().getType());
      mend();
    }
  }

private:
  RigToken& token() const { return tokens_.at(index_); }
  Span place() const { return tokens_.span(token()); }
  std::string text() const { return std::string(tokens_.text(token())); }

  void follow(std::size_t type) {
    if (type == RigLexer::LPAREN || type == RigLexer::LBRACKET)
      ++parentheses_;
    else if ((type == RigLexer::RPAREN || type == RigLexer::RBRACKET) && parentheses_ > 0)
      --parentheses_;
    else if (type == RigLexer::LBRACE || type == RigLexer::RBRACE)
      parentheses_ = 0;
  }

  void mend() {
    switch (token().getType()) {
    case RigLexer::ARROW:
      report_.add(
          diagnose("arrow-in-path", {{"text", text()}}).at(place()).certain_edit(place(), ">", "write >"));
      token().set_type(RigLexer::GREATER);
      break;
    case RigLexer::SEMICOLON:
      mend_semicolon();
      break;
    case RigLexer::SLASH_COMMENT:
      mend_slash_comment();
      break;
    case RigLexer::UNCLOSED_STRING:
      mend_unclosed_string();
      break;
    case RigLexer::OTHER_QUOTES:
      mend_quotes();
      break;
    case RigLexer::MALFORMED_NUMBER:
      mend_number(tokens_, index_, number_place(), report_);
      break;
    case RigLexer::MALFORMED_NAME:
      mend_name();
      break;
    case RigLexer::UNKNOWN:
      mend_odd_characters();
      break;
    default:
      break;
    }
  }

  void leave_out(std::size_t count = 1) {
    const auto first = tokens_.tokens().begin() + static_cast<std::ptrdiff_t>(index_);
    tokens_.tokens().erase(first, first + static_cast<std::ptrdiff_t>(count));
    --index_; // the next token has moved here; the step forward undoes it, at the very first by wrapping
  }

  NumberPlace number_place() const {
    if (parentheses_ == 0 || index_ == 0)
      return NumberPlace::line;
    const std::size_t before =
        tokens_.type_at(index_ - 1) == RigLexer::MINUS && index_ > 1 ? index_ - 2 : index_ - 1;
    const std::size_t type = tokens_.type_at(before);
    return type == RigLexer::LPAREN || type == RigLexer::COMMA ? NumberPlace::vector : NumberPlace::setting;
  }

  /// Close behind a word the two strokes may be the middle of an address or a path.
  void mend_slash_comment() {
    const Span strokes{place().source, place().begin, place().begin + 2};
    const bool apart = index_ == 0 || tokens_.span(tokens_.at(index_ - 1)).end < strokes.begin ||
                       tokens_.type_at(index_ - 1) == RigLexer::NEWLINE;
    auto finding = diagnose("slash-comment").at(place());
    report_.add(apart ? std::move(finding).certain_edit(strokes, "#", "write # for the //")
                      : std::move(finding).edit(strokes, "#", "write # for the //"));
    leave_out();
  }

  void mend_semicolon() {
    const bool last =
        ends_line(tokens_.type_at(index_ + 1)) && tokens_.type_at(index_ + 1) != RigLexer::RBRACE;
    auto finding = diagnose("semicolon").at(place());
    if (parentheses_ > 0) {
      report_.add(std::move(finding).edit(place(), ",", "write a comma"));
      token().set_type(RigLexer::COMMA);
    } else {
      report_.add(last ? std::move(finding).certain_edit(place(), "", "leave the ; out")
                       : std::move(finding).edit(place(), "\n", "begin a new line"));
      token().set_type(RigLexer::NEWLINE);
    }
  }

  /// A text that runs to the end of the line has often swallowed the brace or parenthesis there.
  void mend_unclosed_string() {
    const std::string whole = text();
    if (whole == "\"" && index_ > 0 && tokens_.type_at(index_ - 1) == RigLexer::STRING &&
        tokens_.span(tokens_.at(index_ - 1)).end == place().begin) {
      const Span both = cover(tokens_.span(tokens_.at(index_ - 1)), place());
      std::string escaped(tokens_.text(tokens_.at(index_ - 1)));
      escaped.pop_back();
      escaped += "\\\"\"";
      report_.add(diagnose("quote-in-text").at(both).edit(both, escaped, "write " + escaped));
      leave_out();
      return;
    }
    std::size_t end = whole.find_last_not_of(" \t");
    std::size_t swallowed = 0;
    if (end != std::string::npos && end > 0) {
      if (whole[end] == '{' || whole[end] == '}')
        swallowed = whole[end] == '{' ? RigLexer::LBRACE : RigLexer::RBRACE;
      else if (whole[end] == ')' && parentheses_ > 0)
        swallowed = RigLexer::RPAREN;
    }
    if (end == std::string::npos)
      end = 0;
    std::size_t close = end + 1;
    if (swallowed != 0)
      close = std::max<std::size_t>(whole.find_last_not_of(" \t", end - 1) + 1, 1);
    const std::uint32_t at = place().begin + static_cast<std::uint32_t>(close);
    report_.add(diagnose("unclosed-text")
                    .at(place(), "no quote closes this text")
                    .edit({place().source, at, at}, "\"", "close the text with \""));
    token().set_type(RigLexer::STRING);
    if (swallowed == 0)
      return;
    // The brace is the last character of the token but for blanks, which are one byte each.
    const std::size_t blanks_behind = whole.size() - end - 1;
    const std::size_t sign_end = token().end() - blanks_behind;
    RigToken* sign = tokens_.make(swallowed, sign_end - 1, sign_end, token().getLine(),
                                  token().getCharPositionInLine() + (sign_end - 1 - token().begin()));
    token().set_end(sign_end - 1 - (end - close));
    tokens_.tokens().insert(tokens_.tokens().begin() + static_cast<std::ptrdiff_t>(index_) + 1, sign);
  }

  void mend_quotes() {
    std::string inner = text();
    const std::size_t front = first_code_point(inner).bytes;
    inner.erase(0, front);
    std::size_t back = inner.size();
    while (back > 0 && (static_cast<unsigned char>(inner[back - 1]) & 0xC0) == 0x80)
      --back;
    inner.erase(back - 1);
    std::string plain = "\"";
    plain += inner;
    plain += '"';
    // An apostrophe may be a foot mark, and a backslash means something else between plain quotes.
    const bool apostrophe =
        text().starts_with('\'') || text().starts_with("\u2018") || text().starts_with("\u2019");
    auto finding = diagnose("other-quotes", {{"text", text()}}).at(place());
    report_.add(apostrophe || inner.find('\\') != std::string::npos
                    ? std::move(finding).edit(place(), plain, "write " + plain)
                    : std::move(finding).certain_edit(place(), plain, "write " + plain));
    token().set_type(RigLexer::STRING);
  }

  /// `cap_tang` -> `cap-tang`, `cap--tang` -> `cap-tang`; nothing when letters have no plain counterpart.
  static std::string plain_name(std::string_view name) {
    std::string result;
    for (const char c : name) {
      if (static_cast<unsigned char>(c) >= 0x80)
        return {};
      if (c != '_' && c != '-')
        result += c;
      else if (!result.empty() && result.back() != '-')
        result += '-';
    }
    while (result.ends_with('-'))
      result.pop_back();
    return result;
  }

  void mend_name() {
    const std::string plain = plain_name(text());
    auto finding = diagnose("malformed-name", {{"name", text()}}).at(place());
    // `arm-` may be a difference that lacks its blanks; single strokes inside a word are a way of writing.
    const std::string written = text();
    const bool only_strokes = plain.size() == written.size();
    report_.add(plain.empty()  ? std::move(finding)
                : only_strokes ? std::move(finding).certain_edit(place(), plain, "write " + plain)
                               : std::move(finding).edit(place(), plain, "write " + plain));
    token().set_type(RigLexer::NAME);
  }

  static std::string character_name(std::string_view character) {
    const auto code = static_cast<std::uint32_t>(first_code_point(character).value);
    const std::string number = fmt::format("U+{:04X}", code);
    const bool visible = code > 0x20 && code != 0x7F && !(code >= 0x80 && code < 0xA1) && code != 0xAD &&
                         !(code >= 0x2000 && code <= 0x200F) && code != 0xFEFF && code != 0x3000;
    return visible ? fmt::format("{} ({})", character, number) : number;
  }

  /// Several in a row, as a file in another encoding has them, are one finding.
  void mend_odd_characters() {
    const std::string first = text();
    const OddCharacter* known = find_odd_character(first);
    Span all = place();
    std::size_t count = 1;
    for (; known == nullptr && tokens_.type_at(index_ + count) == RigLexer::UNKNOWN; ++count) {
      const RigToken& next = tokens_.at(index_ + count);
      if (tokens_.span(next).begin != all.end || find_odd_character(tokens_.text(next)) != nullptr)
        break;
      all.end = tokens_.span(next).end;
    }
    auto finding = diagnose("odd-character", {{"character", character_name(first)}}).at(all);
    if (known == nullptr) {
      report_.add(std::move(finding));
    } else {
      std::string title = "leave it out";
      if (known->replacement == " ")
        title = "write a plain blank";
      else if (!known->replacement.empty())
        title = fmt::format("write {}", trim_front(known->replacement));
      const std::string replacement(known->replacement);
      report_.add(replacement == " " ? std::move(finding).certain_edit(all, replacement, std::move(title))
                                     : std::move(finding).edit(all, replacement, std::move(title)));
    }
    if (known != nullptr && known->meant != 0) {
      token().set_type(known->meant);
      return;
    }
    // A number that has lost its unit to the odd character is not a number without one.
    if (index_ > 0 && tokens_.type_at(index_ - 1) == RigLexer::NUMBER)
      tokens_.at(index_ - 1).set_type(RigLexer::MALFORMED_NUMBER);
    tokens_.doubt(token());
    leave_out(count);
  }

  TokenList& tokens_;
  SyntaxReport& report_;
  std::size_t index_ = 0;
  std::size_t parentheses_ = 0;
};

} // namespace

void mend_spellings(TokenList& tokens, SyntaxReport& report) {
  SpellingMender(tokens, report).run();
  tokens.renumber();
}

} // namespace sheerpole
