#include "syntax/antlr/slip_strategy.hpp"

#include "syntax/antlr/token_list.hpp"

#include <RigLexer.h>
#include <antlr4-runtime/Exceptions.h>
#include <antlr4-runtime/InputMismatchException.h>

#include <algorithm>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigLexer;
using sheerpole_antlr::RigParser;

/// Whether the rule is read inside parentheses or brackets of a value.
bool is_in_parentheses(const antlr4::ParserRuleContext* context) {
  for (; context != nullptr; context = static_cast<const antlr4::ParserRuleContext*>(context->parent)) {
    switch (context->getRuleIndex()) {
    case RigParser::RuleSettings:
      return true;
    case RigParser::RuleOperand: {
      const auto& operand = static_cast<const RigParser::OperandContext&>(*context);
      const std::size_t first = operand.start->getType();
      if (first == RigLexer::LPAREN || (first == RigLexer::MINUS && !operand.parts.empty()))
        return true;
      break;
    }
    case RigParser::RuleValue:
      if (context->start->getType() == RigLexer::LBRACKET)
        return true;
      break;
    case RigParser::RuleBlock:
    case RigParser::RuleFile:
      return false;
    default:
      break;
    }
  }
  return false;
}

/// Whether a sign of this type goes on with the value, but as the other of path and list.
bool mixes_path_and_list(const RigParser::ValueContext& value, std::size_t type) {
  return (value.path != nullptr && type == RigLexer::COMMA) ||
         (value.list != nullptr && type == RigLexer::GREATER);
}

} // namespace

bool SlipStrategy::is_news() {
  if (here() < quiet_until_ || findings_.full())
    return false;
  quiet_until_ = here() + 1;
  return !tokens_.in_doubt(tokens_.at(here()));
}

bool SlipStrategy::line_has_brace() const {
  for (std::size_t ahead = 0;; ++ahead) {
    if (type(ahead) == RigLexer::LBRACE)
      return true;
    if (ends_line(type(ahead)))
      return false;
  }
}

void SlipStrategy::pass_over(bool commas) {
  std::size_t index = here();
  std::size_t depth = 0;
  for (;; ++index) {
    const std::size_t type = tokens_.type_at(index);
    if (type == antlr4::Token::EOF)
      break;
    if (depth == 0 && (ends_line(type) || closes(type) || (commas && type == RigLexer::COMMA)))
      break;
    if (opens(type))
      ++depth;
    else if (closes(type))
      --depth;
  }
  tokens_.seek(index);
  // What stops here may be missed by the rules further out as well.
  quiet_until_ = std::max(quiet_until_, index + 1);
}

// ---- before a choice

void SlipStrategy::sync(antlr4::Parser* parser) {
  if (findings_.full()) // nobody reads on, and each further mend costs
    throw antlr4::ParseCancellationException();
  const antlr4::ParserRuleContext* context = parser->getContext();
  switch (context->getRuleIndex()) {
  case Rule::RuleFile:
    return sync_file(static_cast<const Rule::FileContext&>(*context));
  case Rule::RuleStatement:
    return sync_statement(static_cast<const Rule::StatementContext&>(*context));
  case Rule::RuleBlock:
    return sync_block(static_cast<const Rule::BlockContext&>(*context));
  case Rule::RuleEntry:
    return sync_entry(parser, static_cast<const Rule::EntryContext&>(*context));
  case Rule::RuleSettings:
    return sync_settings(static_cast<const Rule::SettingsContext&>(*context));
  default:
    return;
  }
}

void SlipStrategy::sync_file(const Rule::FileContext& file) {
  if (file.statements.empty()) {
    // What can not begin a statement at all must not end the file.
    while (type() != antlr4::Token::EOF && type() != RigLexer::NAME && type() != RigLexer::LANGUAGE &&
           type() != RigLexer::USE && type() != RigLexer::LET && type() != RigLexer::EXPECT) {
      if (is_news())
        findings_.line_start(here(), false);
      pass_over(false);
      if (type() != antlr4::Token::EOF)
        tokens_.consume();
    }
    return;
  }
  if (type() == RigLexer::NEWLINE || type() == antlr4::Token::EOF)
    return;
  if (is_news())
    findings_.left_over(here());
  do {
    pass_over(false);
    if (closes(type()))
      tokens_.consume();
  } while (type() != RigLexer::NEWLINE && type() != antlr4::Token::EOF);
}

void SlipStrategy::sync_statement(const Rule::StatementContext& statement) {
  if (statement.kind == nullptr && type() == RigLexer::NAME && type(1) == RigLexer::EQUALS &&
      statement.start == tokens_.get(here())) {
    if (is_news())
      findings_.missing_let(here());
    tokens_.insert(here(), RigLexer::LET);
  }
}

void SlipStrategy::sync_block(const Rule::BlockContext& block) {
  if (block.entries.empty()) {
    while (type() != RigLexer::RBRACE && type() != RigLexer::NUMBER && !is_word(type())) {
      if (type() == antlr4::Token::EOF)
        return;
      if (type() != RigLexer::NEWLINE) {
        if (is_news())
          findings_.line_start(here(), true);
        pass_over(false);
      }
      if (type() == RigLexer::NEWLINE)
        tokens_.consume();
    }
    return;
  }
  if (ends_line(type()))
    return;
  if (is_news()) {
    const Rule::ValueContext* value = block.entries.back()->content;
    if (value != nullptr && mixes_path_and_list(*value, type()))
      findings_.path_and_list(here());
    else
      findings_.left_over(here());
  }
  do {
    pass_over(false);
    if (closes(type()) && type() != RigLexer::RBRACE)
      tokens_.consume();
  } while (!ends_line(type()));
}

void SlipStrategy::put_in_colon(std::size_t name, std::size_t at) {
  if (is_news())
    findings_.missing_colon(name, at);
  tokens_.insert(at, RigLexer::COLON);
}

void SlipStrategy::sync_entry(antlr4::Parser* parser, const Rule::EntryContext& entry) {
  if (entry.name == nullptr || entry.content != nullptr || entry.arguments != nullptr ||
      entry.rest != nullptr || entry.count != nullptr || entry.called != nullptr)
    return;
  const std::size_t name = entry.name->start->getTokenIndex();
  const std::size_t next = type();
  if (next == RigLexer::EQUALS) {
    if (is_news())
      findings_.equals_for_colon(name, here());
    tokens_.at(here()).set_type(RigLexer::COLON);
  } else if (begins_value(next)) {
    put_in_colon(name, here());
  } else if (next == RigLexer::LPAREN && !is_word(type(1)) && type(1) != RigLexer::RPAREN) {
    put_in_colon(name, here()); // `cap-tang (0, 0, 12) m`: no settings, a place
  } else if (next == RigLexer::STRING && entry.title == nullptr && entry.side == nullptr &&
             ends_line(type(1))) {
    put_in_colon(name, here());
  } else if (is_word(next) && next != RigLexer::FROM && next != RigLexer::OF && next != RigLexer::ON &&
             entry.title == nullptr && !line_has_brace()) {
    if (type(1) != RigLexer::COLON) {
      put_in_colon(name, here());
      return;
    }
    if (is_news())
      findings_.blank_in_name(name, here());
    throw antlr4::InputMismatchException(parser);
  }
}

void SlipStrategy::sync_settings(const Rule::SettingsContext& settings) {
  if (type() == RigLexer::RPAREN)
    return;
  if (settings.items.empty()) {
    if (is_word(type()))
      return;
    if (is_news())
      findings_.setting_without_name(here());
  } else {
    if (type() == RigLexer::COMMA)
      return;
    if (is_word(type()) && (type(1) == RigLexer::COLON || type(1) == RigLexer::EQUALS)) {
      if (is_news())
        findings_.missing_comma(here());
      tokens_.insert(here(), RigLexer::COMMA);
      return;
    }
    // `count: 3 diameter: 14 mm`: the name was taken for the unit.
    const bool unit_is_name = type() == RigLexer::COLON && tokens_.type_at(here() - 1) == RigLexer::NAME &&
                              tokens_.type_at(here() - 2) == RigLexer::NUMBER;
    if (is_news())
      unit_is_name ? findings_.missing_comma(here() - 1) : findings_.left_over(here());
  }
  // A choice that has a comma ahead goes on with the next setting; the first one has to go straight to the
  // end.
  pass_over(!settings.items.empty());
}

// ---- a certain sign is due

antlr4::Token* SlipStrategy::recoverInline(antlr4::Parser* parser) {
  const antlr4::ParserRuleContext* context = parser->getContext();
  RigToken& token = tokens_.at(here());
  switch (context->getRuleIndex()) {
  case Rule::RuleStatement: {
    const auto& statement = static_cast<const Rule::StatementContext&>(*context);
    if (statement.name == nullptr)
      break;
    const std::size_t name = statement.name->start->getTokenIndex();
    if (type() == RigLexer::COLON) {
      if (is_news())
        findings_.colon_for_equals(name, here());
      parser->consume();
      return &token;
    }
    if (begins_value(type()) || type() == RigLexer::LPAREN || type() == RigLexer::STRING) {
      if (is_news())
        findings_.missing_equals(name);
      return &token;
    }
    break;
  }
  case Rule::RuleEntry: {
    const auto& entry = static_cast<const Rule::EntryContext&>(*context);
    if (entry.count != nullptr && entry.name == nullptr && is_word(type())) {
      if (is_news())
        findings_.missing_times(entry.count->getTokenIndex());
      return &token;
    }
    if (entry.side != nullptr && entry.content == nullptr && type() == RigLexer::LPAREN) {
      if (is_news())
        findings_.missing_colon(entry.name->start->getTokenIndex(), here());
      return &token;
    }
    break;
  }
  case Rule::RuleSetting: {
    const auto& setting = static_cast<const Rule::SettingContext&>(*context);
    if (setting.name == nullptr)
      break;
    const std::size_t name = setting.name->start->getTokenIndex();
    if (type() == RigLexer::EQUALS) {
      if (is_news())
        findings_.equals_for_colon(name, here());
      parser->consume();
      return &token;
    }
    if (begins_value(type()) || type() == RigLexer::STRING || is_word(type())) {
      if (is_news())
        findings_.missing_colon(name, here());
      return &token;
    }
    break;
  }
  case Rule::RuleBlock: {
    // A first line with something odd in it still has its block.
    if (!line_has_brace())
      break;
    if (is_news())
      findings_.heading_unreadable(here());
    while (type() != RigLexer::LBRACE)
      tokens_.consume();
    RigToken& brace = tokens_.at(here());
    parser->consume();
    return &brace;
  }
  default:
    break;
  }
  throw antlr4::InputMismatchException(parser);
}

// ---- nothing helped

void SlipStrategy::reportError(antlr4::Parser* parser, const antlr4::RecognitionException&) {
  if (!is_news())
    return;
  const antlr4::ParserRuleContext* context = parser->getContext();
  switch (context->getRuleIndex()) {
  case Rule::RuleStatement:
    return report_in_statement(static_cast<const Rule::StatementContext&>(*context));
  case Rule::RuleBlock:
    return report_in_block(static_cast<const Rule::BlockContext&>(*context));
  case Rule::RuleEntry:
    return report_in_entry(static_cast<const Rule::EntryContext&>(*context));
  case Rule::RuleWord:
  case Rule::RuleLabel:
    return report_missing_name();
  case Rule::RuleSetting:
    return findings_.setting_without_name(here() - 1);
  case Rule::RuleOperand:
    if (!static_cast<const Rule::OperandContext&>(*context).parts.empty())
      return findings_.left_over(here());
    return findings_.missing_value(here());
  case Rule::RuleValue: {
    const auto& value = static_cast<const Rule::ValueContext&>(*context);
    if (value.stops.empty())
      return findings_.missing_value(here());
    if (mixes_path_and_list(value, type()))
      return findings_.path_and_list(here());
    return findings_.left_over(here());
  }
  default:
    return findings_.left_over(here());
  }
}

void SlipStrategy::recover(antlr4::Parser* parser, std::exception_ptr) {
  const antlr4::ParserRuleContext* context = parser->getContext();
  const bool parentheses = is_in_parentheses(context);
  const std::size_t rule = context->getRuleIndex();
  const bool value_is_missing =
      rule == Rule::RuleOperand && here() == context->start->getTokenIndex() &&
      (type() == RigLexer::COMMA || type() == RigLexer::GREATER || type() == RigLexer::PLUS ||
       type() == RigLexer::STAR || type() == RigLexer::SLASH);
  const bool block_follows =
      (rule == Rule::RuleWord || rule == Rule::RuleLabel) && type() == RigLexer::LBRACE && !parentheses;
  if (value_is_missing || block_follows)
    return; // what is here can be read
  pass_over(parentheses);
  // What was opened by this rule is closed by it.
  const bool opened_here =
      (rule == Rule::RuleSettings) ||
      (rule == Rule::RuleOperand && !static_cast<const Rule::OperandContext&>(*context).parts.empty()) ||
      (rule == Rule::RuleValue && !static_cast<const Rule::ValueContext&>(*context).stops.empty());
  if (opened_here) {
    while (type() == RigLexer::COMMA) {
      tokens_.consume();
      pass_over(true);
    }
    if (type() == RigLexer::RPAREN || type() == RigLexer::RBRACKET)
      tokens_.consume();
  }
}

} // namespace sheerpole
