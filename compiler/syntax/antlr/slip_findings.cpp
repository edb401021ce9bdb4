#include "syntax/antlr/slip_findings.hpp"

#include "syntax/antlr/token_list.hpp"
#include "units/parse_quantity.hpp"

#include <RigLexer.h>

#include <algorithm>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigLexer;

/// The words of a line as far as the reader needs them to find it again.
std::string one_line(std::string_view text) {
  return std::string(text.substr(0, std::min(text.find('\n'), text.size())));
}

} // namespace

bool SlipFindings::is_line_end(std::size_t index) const {
  const std::size_t type = tokens_.type_at(index);
  if (type == RigLexer::NEWLINE)
    return true;
  // The line end before a closing brace and before the end of the file has been dropped.
  return index > 0 && (type == RigLexer::RBRACE || type == antlr4::Token::EOF) &&
         tokens_.at(index).getLine() > tokens_.at(index - 1).getLine();
}

std::string SlipFindings::description(std::size_t index) const {
  return is_line_end(index) ? "the end of the line" : describe(tokens_, tokens_.at(index));
}

Span SlipFindings::behind(std::size_t index) const {
  const Span place = span(index);
  return {place.source, place.end, place.end};
}

Span SlipFindings::place_of(std::size_t index) const {
  if (index > 0 && (is_line_end(index) || tokens_.type_at(index) == antlr4::Token::EOF))
    return behind(index - 1);
  return span(index);
}

void SlipFindings::missing_colon(std::size_t name, std::size_t value) {
  const std::string before(tokens_.source().text(cover(span(name), span(value - 1))));
  report_.add(diagnose("missing-colon", {{"name", before}, {"value", description(value)}})
                  .at(behind(value - 1), ": belongs here")
                  .edit(behind(value - 1), ":", "put in the colon"));
}

void SlipFindings::equals_for_colon(std::size_t name, std::size_t equals) {
  const bool blank_before = equals > 0 && span(equals - 1).end < span(equals).begin;
  const Span place =
      blank_before ? Span{span(equals).source, span(equals - 1).end, span(equals).end} : span(equals);
  report_.add(diagnose("equals-for-colon", {{"name", text(name)}})
                  .at(span(equals))
                  .certain_edit(place, ":", "write : for ="));
}

void SlipFindings::colon_for_equals(std::size_t name, std::size_t colon) {
  const bool blank_before = span(colon - 1).end < span(colon).begin;
  report_.add(diagnose("colon-for-equals", {{"name", text(name)}})
                  .at(span(colon))
                  .certain_edit(span(colon), blank_before ? "=" : " =", "write = for :"));
}

void SlipFindings::missing_equals(std::size_t name) {
  report_.add(diagnose("missing-equals", {{"name", text(name)}})
                  .at(behind(name), "= belongs here")
                  .certain_edit(behind(name), " =", "put in ="));
}

void SlipFindings::missing_times(std::size_t count) {
  report_.add(diagnose("missing-times", {{"count", text(count)}, {"name", text(count + 1)}})
                  .at(behind(count), "x belongs here")
                  .edit(behind(count), " x", "write " + text(count) + " x " + text(count + 1)));
}

void SlipFindings::missing_let(std::size_t name) {
  const Span before{span(name).source, span(name).begin, span(name).begin};
  report_.add(
      diagnose("missing-let", {{"name", text(name)}}).at(span(name)).edit(before, "let ", "put in let"));
}

void SlipFindings::missing_comma(std::size_t next) {
  report_.add(diagnose("missing-comma", {{"next", description(next)}})
                  .at(behind(next - 1), "a comma belongs here")
                  .certain_edit(behind(next - 1), ",", "put in the comma"));
}

void SlipFindings::setting_without_name(std::size_t value) {
  report_.add(diagnose("setting-without-name", {{"found", description(value)}}).at(place_of(value)));
}

void SlipFindings::comma_too_many(std::size_t comma) {
  report_.add(
      diagnose("comma-too-many").at(span(comma)).certain_edit(span(comma), "", "leave the comma out"));
}

void SlipFindings::missing_value(std::size_t found) {
  if (tokens_.type_at(found) == RigLexer::COMPOUND_UNIT) {
    division_without_blanks(found);
    return;
  }
  if (found == 0)
    return;
  std::string before = text(found - 1);
  const std::size_t type = tokens_.type_at(found - 1);
  if (found > 1 && type == RigLexer::COLON)
    before = text(found - 2) + before;
  else if (type == RigLexer::COMMA)
    before = "the comma";
  report_.add(diagnose("missing-value", {{"before", before}, {"found", description(found)}})
                  .at(place_of(found), "a value belongs here"));
}

void SlipFindings::division_without_blanks(std::size_t quotient) {
  const std::string written = text(quotient);
  const std::size_t slash = written.find('/');
  const std::string apart = written.substr(0, slash) + " / " + written.substr(slash + 1);
  report_.add(diagnose("division-without-blanks", {{"text", written}})
                  .at(span(quotient))
                  .edit(span(quotient), apart, "write " + apart));
}

bool SlipFindings::fraction_behind_unit(std::size_t found) {
  const std::string fraction = text(found);
  const std::size_t slash = fraction.find('/');
  if (found == 0 || slash == std::string::npos ||
      fraction.find_first_not_of("0123456789/") != std::string::npos)
    return false;
  std::string before = text(found - 1);
  std::size_t first = found - 1;
  if (before == "in" && found > 1) { // a unit that is a word of its own
    first = found - 2;
    before = std::string(tokens_.source().text(cover(span(first), span(found - 1))));
  }
  std::string_view unit;
  for (const std::string_view mark : {"in", "\"", "\u2033"})
    if (before.ends_with(mark))
      unit = mark;
  const std::size_t end = before.find_last_of("0123456789");
  if (unit.empty() || end == std::string::npos)
    return false;
  const std::string reading = before.substr(0, end + 1) + " " + fraction + before.substr(end + 1);
  if (!parse_quantity(reading).ok())
    return false;
  const Span place = cover(span(first), span(found));
  report_.add(diagnose("fraction-behind-unit", {{"fraction", fraction}, {"reading", reading}})
                  .at(place)
                  .edit(place, reading, "write " + reading));
  return true;
}

void SlipFindings::left_over(std::size_t found) {
  if (fraction_behind_unit(found))
    return;
  auto finding = diagnose("left-over", {{"found", description(found)}}).at(place_of(found));
  // The next property of the block, on the line of the one before it.
  const bool of_side = tokens_.type_at(found + 1) == RigLexer::DOT;
  if (found > 0 && tokens_.type_at(found + (of_side ? 3 : 1)) == RigLexer::COLON) {
    const Span blank{span(found).source, span(found - 1).end, span(found).begin};
    finding = std::move(finding).edit(blank, "\n  ", "put " + text(found) + " on a line of its own");
  }
  report_.add(std::move(finding));
}

void SlipFindings::path_and_list(std::size_t sign) {
  report_.add(diagnose("path-and-list").at(span(sign)));
}

void SlipFindings::quotes_missing(std::size_t begin, std::size_t end) {
  const Span place = cover(span(begin), span(end - 1));
  const std::string quoted = '"' + std::string(tokens_.source().text(place)) + '"';
  // Behind a quote or a backslash it is not plain where the path ends.
  const bool plain = quoted.find_first_of("\"\\", 1) == quoted.size() - 1;
  auto finding = diagnose("quotes-missing").at(place);
  report_.add(plain ? std::move(finding).certain_edit(place, quoted, "write " + quoted)
                    : std::move(finding).edit(place, quoted, "write " + quoted));
}

void SlipFindings::language_number(std::size_t found) {
  report_.add(diagnose("language-number", {{"found", description(found)}}).at(place_of(found)));
}

void SlipFindings::line_start(std::size_t found, bool in_block) {
  report_.add(
      diagnose(in_block ? "unreadable-entry" : "unreadable-statement", {{"found", description(found)}})
          .at(place_of(found)));
}

void SlipFindings::property_outside_block(std::size_t name) {
  report_.add(diagnose("property-outside-block", {{"name", text(name)}}).at(span(name)));
}

void SlipFindings::missing_block(std::size_t begin, std::size_t end) {
  const Span heading = cover(span(begin), span(end - 1));
  report_.add(diagnose("missing-block", {{"heading", one_line(tokens_.source().text(heading))}})
                  .at(heading)
                  .edit(behind(end - 1), " {\n}", "put in an empty block"));
}

void SlipFindings::heading_unreadable(std::size_t found) {
  report_.add(diagnose("heading-unreadable", {{"found", description(found)}}).at(span(found)));
}

void SlipFindings::blank_in_name(std::size_t first, std::size_t second) {
  const Span place = cover(span(first), span(second));
  const std::string joined = text(first) + "-" + text(second);
  report_.add(
      diagnose("blank-in-name", {{"first", text(first)}, {"second", text(second)}, {"joined", joined}})
          .at(place)
          .edit(place, joined, "write " + joined));
}

void SlipFindings::missing_name(std::string_view wanted, std::size_t found) {
  report_.add(diagnose("missing-name", {{"wanted", std::string(wanted)}, {"found", description(found)}})
                  .at(place_of(found)));
}

} // namespace sheerpole
