#include "syntax/antlr/mend_tokens.hpp"

#include "syntax/antlr/token_list.hpp"

#include <RigLexer.h>

#include <algorithm>
#include <iterator>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigLexer;

/// A sign that waits for its counterpart.
struct Open {
  std::size_t type = 0;
  Span place;
  std::size_t line = 0;
  std::size_t indentation = 0; ///< of the line on which it stands
  std::string heading;         ///< the text before a brace on its line: `stay cap-shroud "Cap shroud"`
  std::size_t line_ends =
      0; ///< for a parenthesis: where in the kept list its line is over, 0 while it is not
  enum class Body {
    unseen,
    indented,
    flush
  } body = Body::unseen; ///< how the first line of a block stands to it
};

/// How many closing braces are missing and how many are too many, by count alone.
struct BraceCount {
  std::size_t missing = 0;
  std::size_t extra = 0;
};

BraceCount count_braces(const TokenList::Tokens& tokens) {
  BraceCount result;
  for (const RigToken* token : tokens) {
    if (token->getType() == RigLexer::LBRACE)
      ++result.missing;
    else if (token->getType() == RigLexer::RBRACE && result.missing > 0)
      --result.missing;
    else if (token->getType() == RigLexer::RBRACE)
      ++result.extra;
  }
  return result;
}

/// Whether what stands in the blocks of this file is indented, by half or more of the blocks that have
/// something in them and begin a new line.
bool indents_blocks(const TokenList::Tokens& tokens) {
  std::size_t indented = 0;
  std::size_t flush = 0;
  std::size_t indentation = 0;
  for (std::size_t i = 0; i + 2 < tokens.size(); ++i) {
    if (i == 0 || tokens[i - 1]->getType() == RigLexer::NEWLINE)
      indentation = tokens[i]->getCharPositionInLine();
    if (tokens[i]->getType() != RigLexer::LBRACE || tokens[i + 1]->getType() != RigLexer::NEWLINE ||
        tokens[i + 2]->getType() == RigLexer::RBRACE || tokens[i + 2]->getType() == RigLexer::NEWLINE)
      continue;
    if (tokens[i + 2]->getCharPositionInLine() > indentation)
      ++indented;
    else
      ++flush;
  }
  return indented > 0 && indented >= flush; // the one that is not closed may be the flush one
}

class BracketMender {
public:
  BracketMender(TokenList& tokens, SyntaxReport& report)
      : tokens_(tokens), report_(report), raw_(std::move(tokens.tokens())) {}

  void run() {
    put_in_opening_braces();
    braces_ = count_braces(raw_);
    indents_ = indents_blocks(raw_);
    kept_.reserve(raw_.size() + 8);
    for (RigToken* token : raw_) {
      if (starts_line_ && token->getType() != RigLexer::NEWLINE)
        begin_line(*token);
      take(token);
    }
    tokens_.tokens() = std::move(kept_);
    tokens_.renumber();
  }

private:
  // ---- opening braces: `stay cap-shroud` with its properties indented below

  /// The index of the first token of the next line that has any, or of the end mark.
  std::size_t next_line(std::size_t index) const {
    while (raw_[index]->getType() != RigLexer::NEWLINE && raw_[index]->getType() != antlr4::Token::EOF)
      ++index;
    while (raw_[index]->getType() == RigLexer::NEWLINE)
      ++index;
    return index;
  }

  /// Whether the tokens [begin, end) are the first line of a block but for its brace: two words or more, or
  /// a single one when a brace is known to be missing, and nothing of a property or an item with settings.
  bool is_heading(std::size_t begin, std::size_t end, bool brace_is_missing) const {
    if (begin >= end || !is_word(raw_[begin]->getType()))
      return false;
    if (end - begin == 1) // further in, it may as well be a part of a stack
      return brace_is_missing || raw_[begin]->getCharPositionInLine() == 0;
    for (std::size_t i = begin + 1; i < end; ++i) {
      const std::size_t type = raw_[i]->getType();
      if (!is_word(type) && type != RigLexer::STRING && type != RigLexer::DOT)
        return false;
    }
    const std::size_t first = raw_[begin]->getType();
    return first != RigLexer::LANGUAGE && first != RigLexer::USE && first != RigLexer::LET &&
           first != RigLexer::EXPECT;
  }

  void put_in_opening_braces() {
    const bool brace_is_missing = count_braces(raw_).extra > 0;
    TokenList::Tokens result;
    result.reserve(raw_.size() + 8);
    std::size_t begin = 0;
    while (begin < raw_.size() && raw_[begin]->getType() == RigLexer::NEWLINE)
      result.push_back(raw_[begin++]);
    while (begin < raw_.size()) {
      const std::size_t next = next_line(begin);
      std::size_t end = next;
      while (end > begin && raw_[end - 1]->getType() == RigLexer::NEWLINE)
        --end;
      const bool deeper = raw_[next]->getType() != antlr4::Token::EOF &&
                          raw_[next]->getType() != RigLexer::LBRACE &&
                          raw_[next]->getCharPositionInLine() > raw_[begin]->getCharPositionInLine();
      RigToken* brace = nullptr;
      if (deeper && !report_.full() && is_heading(begin, end, brace_is_missing)) {
        const Span line = cover(tokens_.span(*raw_[begin]), tokens_.span(*raw_[end - 1]));
        report_.add(
            diagnose("missing-opening-brace", {{"heading", std::string(tokens_.source().text(line))}})
                .at({line.source, line.end, line.end}, "{ belongs here")
                .and_at(tokens_.span(*raw_[next]), "this belongs to the block")
                .edit({line.source, line.end, line.end}, " {", "put in {"));
        brace = tokens_.make_behind(*raw_[end - 1], RigLexer::LBRACE);
      }
      for (std::size_t i = begin; i < next; ++i) {
        if (i == end && brace != nullptr)
          result.push_back(brace);
        result.push_back(raw_[i]);
      }
      if (next == begin || raw_[next]->getType() == antlr4::Token::EOF) {
        result.push_back(raw_[next]);
        break;
      }
      begin = next;
    }
    raw_ = std::move(result);
  }

  // ---- what pairs off

  bool open_is(std::size_t type) const { return !open_.empty() && open_.back().type == type; }
  bool in_parentheses() const { return !open_.empty() && open_.back().type != RigLexer::LBRACE; }

  /// The first token of a line tells where a block that is not closed, or is closed too often, went wrong.
  void begin_line(const RigToken& first) {
    indentation_ = first.getCharPositionInLine();
    line_begin_ = tokens_.span(first).begin;
    starts_line_ = false;
    if (braces_.missing == 0)
      return;
    const bool closing = first.getType() == RigLexer::RBRACE;
    // A parenthesis that is still open must not hide the block round it.
    std::size_t blocks = open_.size();
    while (blocks > 0 && open_[blocks - 1].type != RigLexer::LBRACE)
      --blocks;
    if (blocks == 0 || first.getType() == antlr4::Token::EOF)
      return;
    if (Open& block = open_[blocks - 1]; block.body == Open::Body::unseen && !closing)
      // Where blocks are indented, a line that is not stands behind a block with nothing in it.
      block.body = indents_ || indentation_ > block.indentation ? Open::Body::indented : Open::Body::flush;
    const auto done = [&] {
      const Open& block = open_[blocks - 1];
      if (block.body == Open::Body::flush) // the indentation in this block says nothing
        return true;
      return closing ? indentation_ >= block.indentation : indentation_ > block.indentation;
    };
    if (!done())
      close_parentheses();
    while (braces_.missing > 0 && open_is(RigLexer::LBRACE) && !done()) {
      --blocks;
      close_block();
      if (blocks == 0)
        return;
    }
  }

  void take(RigToken* token) {
    const std::size_t type = token->getType();
    if (type == RigLexer::NEWLINE) {
      starts_line_ = true;
      end_line();
    } else if (opens(type)) {
      if (type == RigLexer::LBRACE)
        close_parentheses();
      open(*token);
    } else if (type == antlr4::Token::EOF) {
      close_parentheses();
      while (!open_.empty())
        close_block();
    } else if (closes(type) && !close(*token)) {
      return;
    }
    kept_.push_back(token);
  }

  void open(const RigToken& token) {
    Open result{token.getType(),   tokens_.span(token), token.getLine(), indentation_, {}, 0,
                Open::Body::unseen};
    std::string_view before = tokens_.source().text(
        {result.place.source, line_begin_, std::max(line_begin_, result.place.begin)});
    before = before.substr(0, before.find_last_not_of(" \t") + 1);
    result.heading = before;
    open_.push_back(std::move(result));
  }

  /// Notes for the parentheses that are open where their line is over, unless it clearly goes on.
  void end_line() {
    if (!in_parentheses() || kept_.empty())
      return;
    const std::size_t last = kept_.back()->getType();
    const bool goes_on = last == RigLexer::COMMA || last == RigLexer::LPAREN ||
                         last == RigLexer::LBRACKET || last == RigLexer::COLON ||
                         last == RigLexer::GREATER || last == RigLexer::NEWLINE;
    if (goes_on)
      return;
    for (Open& each : open_)
      if (each.type != RigLexer::LBRACE && each.line_ends == 0)
        each.line_ends = kept_.size();
  }

  static bool says_more_of_a_value(std::size_t type) {
    return type == RigLexer::MIRRORED || type == RigLexer::TOLERANCE ||
           (type >= RigLexer::MEASURED && type <= RigLexer::COMPUTED);
  }

  /// Where on the line the parenthesis should have been closed: before `mirrored drawn`, and before the
  /// unit when the numbers ahead of it have none, `(0.09, 0, 12.7 m`.
  std::size_t before_what_follows(const Open& open, std::size_t end) const {
    std::size_t begin = end;
    while (begin > 0 && tokens_.span(*kept_[begin - 1]) != open.place)
      --begin;
    std::size_t at = begin;
    while (at < end && !says_more_of_a_value(kept_[at]->getType()))
      ++at;
    if (begin == 0 || at <= begin + 1)
      return end;
    const bool bare_number = at >= begin + 4 && kept_[begin]->getType() == RigLexer::NUMBER &&
                             kept_[begin + 1]->getType() == RigLexer::COMMA;
    const bool minus_and_bare_number = at >= begin + 5 && kept_[begin]->getType() == RigLexer::MINUS &&
                                       kept_[begin + 1]->getType() == RigLexer::NUMBER &&
                                       kept_[begin + 2]->getType() == RigLexer::COMMA;
    const bool unit =
        kept_[at - 1]->getType() == RigLexer::NAME && kept_[at - 2]->getType() == RigLexer::NUMBER;
    return unit && (bare_number || minus_and_bare_number) ? at - 1 : at;
  }

  void close_parentheses() {
    while (in_parentheses()) {
      const Open& each = open_.back();
      std::size_t at = each.line_ends == 0 ? kept_.size() : each.line_ends;
      while (at > 0 && kept_[at - 1]->getType() == RigLexer::NEWLINE)
        --at;
      at = before_what_follows(each, at);
      RigToken& before = *kept_[at - 1];
      const std::uint32_t end = tokens_.span(before).end;
      const std::size_t closing = counterpart(each.type);
      report_.add(
          diagnose("missing-closing-parenthesis",
                   {{"opening", sign_text(each.type)}, {"closing", sign_text(closing)}})
              .at({each.place.source, end, end}, sign_text(closing) + " belongs here")
              .and_at(each.place, "opened here")
              .edit({each.place.source, end, end}, sign_text(closing), "put in " + sign_text(closing)));
      kept_.insert(kept_.begin() + static_cast<std::ptrdiff_t>(at), tokens_.make_behind(before, closing));
      open_.pop_back();
      for (Open& outer : open_)
        if (outer.line_ends >= at && outer.line_ends != 0)
          ++outer.line_ends;
    }
  }

  /// Puts in the brace that is missing for the innermost block, behind the last line that belongs to it.
  void close_block() {
    const Open block = std::move(open_.back());
    open_.pop_back();
    if (braces_.missing > 0)
      --braces_.missing;
    std::size_t at = kept_.size();
    while (at > 0 && kept_[at - 1]->getType() == RigLexer::NEWLINE)
      --at;
    RigToken& before = *kept_[at - 1];
    const std::uint32_t end = tokens_.span(before).end;
    std::string brace = " }";
    if (before.getLine() != block.line) {
      brace = '\n';
      brace.append(block.indentation, ' ');
      brace += '}';
    }
    report_.add(diagnose("missing-closing-brace",
                         {{"heading", block.heading.empty() ? std::string("this block") : block.heading}})
                    .at({block.place.source, end, end}, "} belongs here")
                    .and_at(block.place, "opened here")
                    .edit({block.place.source, end, end}, std::move(brace), "put in }"));
    kept_.insert(kept_.begin() + static_cast<std::ptrdiff_t>(at),
                 tokens_.make_behind(before, RigLexer::RBRACE));
  }

  /// `thimble-9 splice: long-bury)`: two words before a colon on the line that ends here, and between them
  /// the parenthesis. False when there is no such place.
  bool put_in_opening_parenthesis() {
    std::size_t found = 0;
    for (std::size_t i = kept_.size(); i >= 3 && tokens_.span(*kept_[i - 3]).begin >= line_begin_; --i)
      if (is_word(kept_[i - 3]->getType()) && is_word(kept_[i - 2]->getType()) &&
          kept_[i - 1]->getType() == RigLexer::COLON)
        found = i - 2;
    if (found == 0)
      return false;
    const RigToken& before = *kept_[found - 1];
    const Span setting = tokens_.span(*kept_[found]);
    report_.add(diagnose("missing-opening-parenthesis", {{"name", std::string(tokens_.text(*kept_[found]))},
                                                         {"owner", std::string(tokens_.text(before))}})
                    .at(setting, "( belongs before this")
                    .edit({setting.source, setting.begin, setting.begin}, "(", "put in ("));
    kept_.insert(kept_.begin() + static_cast<std::ptrdiff_t>(found),
                 tokens_.make_behind(before, RigLexer::LPAREN));
    return true;
  }

  /// False when the sign closes nothing and is left out.
  bool close(RigToken& token) {
    const std::size_t type = token.getType();
    if (type == RigLexer::RBRACE) {
      close_parentheses();
      const bool first_on_line = tokens_.span(token).begin == line_begin_;
      const bool too_deep =
          first_on_line && braces_.extra > 0 && !open_.empty() && indentation_ > open_.back().indentation;
      // A block over several lines is closed at the beginning of one.
      const bool behind_words = !first_on_line && braces_.extra > 0 && !open_.empty() &&
                                open_.back().type == RigLexer::LBRACE &&
                                open_.back().line != token.getLine();
      if (!open_.empty() && !too_deep && !behind_words) {
        open_.pop_back();
        return true;
      }
      if (braces_.extra > 0)
        --braces_.extra;
    } else if (open_is(counterpart(type))) {
      open_.pop_back();
      return true;
    } else if (in_parentheses()) {
      // `(1, 2]`: read as what closes the one that is open.
      const Open& each = open_.back();
      const std::size_t wanted = counterpart(each.type);
      report_.add(diagnose("wrong-closing-parenthesis", {{"opening", sign_text(each.type)},
                                                         {"closing", sign_text(wanted)},
                                                         {"found", sign_text(type)}})
                      .at(tokens_.span(token))
                      .and_at(each.place, "opened here")
                      .edit(tokens_.span(token), sign_text(wanted), "write " + sign_text(wanted)));
      token.set_type(wanted);
      open_.pop_back();
      return true;
    }
    if (type == RigLexer::RPAREN && put_in_opening_parenthesis())
      return true;
    const std::string_view slug =
        type == RigLexer::RBRACE ? "extra-closing-brace" : "extra-closing-parenthesis";
    report_.add(diagnose(slug, {{"closing", sign_text(type)}})
                    .at(tokens_.span(token))
                    .edit(tokens_.span(token), "", "leave the " + sign_text(type) + " out"));
    return false;
  }

  TokenList& tokens_;
  SyntaxReport& report_;
  TokenList::Tokens raw_;
  TokenList::Tokens kept_;
  std::vector<Open> open_;
  BraceCount braces_;
  bool indents_ = false; ///< see indents_blocks()
  std::size_t indentation_ = 0;
  std::uint32_t line_begin_ = 0;
  bool starts_line_ = true;
};

} // namespace

void mend_brackets(TokenList& tokens, SyntaxReport& report) {
  BracketMender(tokens, report).run();
}

} // namespace sheerpole
