// What a rule that can not go on says, by the rule and by what it has read so far.
#include "syntax/antlr/slip_strategy.hpp"

#include "syntax/antlr/token_list.hpp"

#include <RigLexer.h>

namespace sheerpole {

using sheerpole_antlr::RigLexer;

std::size_t SlipStrategy::line_begin(std::size_t index) const {
  while (index > 0) {
    const std::size_t before = tokens_.type_at(index - 1);
    if (before == RigLexer::NEWLINE || before == RigLexer::LBRACE || before == RigLexer::RBRACE)
      break;
    --index;
  }
  return index;
}

void SlipStrategy::report_in_statement(const Rule::StatementContext& statement) {
  const std::size_t begin = statement.start->getTokenIndex();
  if (here() == begin) {
    if (is_word(type()) && type(1) == RigLexer::COLON)
      return findings_.property_outside_block(here());
    return findings_.line_start(here(), false);
  }
  if (statement.name != nullptr)
    return findings_.missing_value(here());
  if (tokens_.type_at(begin) == RigLexer::LANGUAGE)
    return findings_.language_number(here());
  std::size_t end = here();
  while (!ends_line(tokens_.type_at(end)))
    ++end;
  if (end == here())
    return findings_.missing_name("the file in quotes", here());
  findings_.quotes_missing(here(), end);
}

void SlipStrategy::report_in_block(const Rule::BlockContext&) {
  const std::size_t begin = line_begin(here());
  if (type() == RigLexer::COLON && here() == begin + 1)
    return findings_.property_outside_block(begin);
  if (ends_line(type()) && begin < here())
    return findings_.missing_block(begin, here());
  findings_.left_over(here());
}

void SlipStrategy::report_in_entry(const Rule::EntryContext& entry) {
  if (here() == entry.start->getTokenIndex())
    return findings_.line_start(here(), true);
  if (entry.count != nullptr)
    return findings_.missing_name("x and the name of the part", here());
  findings_.missing_value(here());
}

void SlipStrategy::report_missing_name() {
  const std::size_t before = here() == 0 ? 0 : tokens_.type_at(here() - 1);
  switch (before) {
  case RigLexer::DOT:
    return findings_.missing_name("the side", here());
  case RigLexer::TIMES:
    return findings_.missing_name("the name of the part", here());
  case RigLexer::COMMA:
    if (type() == RigLexer::RPAREN)
      return findings_.comma_too_many(here() - 1);
    return findings_.setting_without_name(here());
  case RigLexer::LPAREN:
    return findings_.setting_without_name(here());
  case RigLexer::LET:
    return findings_.missing_name("the name behind let", here());
  case RigLexer::EXPECT:
    return findings_.missing_name("the stay behind expect", here());
  case RigLexer::ON:
    return findings_.missing_name("the spar behind on", here());
  case RigLexer::FROM:
    return findings_.missing_name("the name behind from", here());
  case RigLexer::OF:
    return findings_.missing_name("the name behind of", here());
  default:
    return findings_.missing_name("a name", here());
  }
}

} // namespace sheerpole
