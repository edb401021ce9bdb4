#include "syntax/antlr/mend_tokens.hpp"

#include "units/parse_quantity.hpp"
#include "units/scan_number.hpp"

#include <RigLexer.h>

#include <algorithm>
#include <string>
#include <vector>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigLexer;

bool only_digits(std::string_view text) {
  return !text.empty() &&
         std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::vector<std::string_view> split(std::string_view text, char separator) {
  std::vector<std::string_view> result;
  for (std::size_t begin = 0;;) {
    const std::size_t end = text.find(separator, begin);
    result.push_back(text.substr(begin, end - begin));
    if (end == std::string_view::npos)
      return result;
    begin = end + 1;
  }
}

/// `1, 2, 3` for `1,2,3`, or for `1 2 3`; empty when there is nothing between the numbers or something else
/// is wrong with one of them.
std::string as_list(std::string_view text, char separator = ',') {
  std::string result;
  const auto parts = split(text, separator);
  for (const std::string_view part : parts) {
    if (!parse_number(part).ok())
      return {};
    result += (result.empty() ? "" : ", ") + std::string(part);
  }
  return parts.size() > 1 ? result : std::string{};
}

/// `2026-05-02` for `2026-5-2`; empty when the text is nothing like a date.
std::string as_date(std::string_view text) {
  const auto parts = split(text, '-');
  if (parts.size() != 3 || parts[0].size() != 4 || parts[1].size() > 2 || parts[2].size() > 2)
    return {};
  std::string result;
  for (const std::string_view part : parts) {
    if (!only_digits(part))
      return {};
    result += (result.empty() ? "" : part.size() == 1 ? "-0" : "-") + std::string(part);
  }
  return result;
}

/// `12 - 3` for `12-3`; empty when the text is anything else.
std::string as_difference(std::string_view text) {
  const auto parts = split(text, '-');
  if (parts.size() != 2 || !parse_number(parts[0]).ok() || !parse_number(parts[1]).ok())
    return {};
  return std::string(parts[0]) + " - " + std::string(parts[1]);
}

/// What is wrong with the text, and the spellings that would be right, as the readers of quantities see it.
QuantityError refusal_of(std::string_view text, bool with_unit) {
  if (with_unit) {
    const auto read = parse_quantity(text);
    return read.ok() ? QuantityError{} : read.error();
  }
  const auto read = parse_number(text);
  if (read.ok() || !read.error().suggestions.empty())
    return read.ok() ? QuantityError{} : read.error();
  // `38-7-3/8` is feet and inches without their marks.
  const auto quantity = parse_quantity(text);
  return quantity.ok() ? read.error() : quantity.error();
}

/// Whether blanks in a number can only part its thousands, as in `11 642`. Two numbers that lack their
/// comma look alike where there may be several in a row, or where the first has three digits: `640 642`.
bool are_thousands(std::string_view number, std::string_view slug, std::size_t readings,
                   NumberPlace where) {
  return slug == "spaced-number" && readings == 1 && where != NumberPlace::vector &&
         number.find_first_not_of("0123456789") <= 2 && number.find("  ") == std::string_view::npos &&
         number.find('\t') == std::string_view::npos;
}

/// `2,7` in a place may be one number or two: an edit that guesses wrong makes another place, and another
/// cut. A decimal point beside the comma, or three numbers in a row, tell that the comma parts numbers.
bool may_be_decimal_comma(std::string_view number) {
  return number.find('.') == std::string_view::npos && std::count(number.begin(), number.end(), ',') == 1;
}

/// Puts numbers and commas in the place of `1,-2,3`.
void take_apart(TokenList& tokens, std::size_t index) {
  const RigToken& whole = tokens.at(index);
  TokenList::Tokens parts;
  std::size_t place = whole.begin();
  const auto add = [&](std::size_t type, std::size_t size) {
    // Digits and signs: one byte, one character.
    parts.push_back(tokens.make(type, place, place + size, whole.getLine(),
                                whole.getCharPositionInLine() + (place - whole.begin())));
    place += size;
  };
  for (std::string_view part : split(tokens.text(whole), ',')) {
    if (!parts.empty())
      add(RigLexer::COMMA, 1);
    if (part.starts_with('-')) {
      add(RigLexer::MINUS, 1);
      part.remove_prefix(1);
    }
    add(RigLexer::NUMBER, part.size());
  }
  auto& all = tokens.tokens();
  const auto at = all.begin() + static_cast<std::ptrdiff_t>(index);
  *at = parts.front();
  all.insert(at + 1, parts.begin() + 1, parts.end());
}

} // namespace

void mend_number(TokenList& tokens, std::size_t index, NumberPlace where, SyntaxReport& report) {
  RigToken& token = tokens.at(index);
  const std::string number(tokens.text(token));
  const std::string list = as_list(number);
  if (where == NumberPlace::vector && !list.empty()) {
    const Span place = tokens.span(token);
    if (may_be_decimal_comma(number)) {
      const std::string point = std::string(number).replace(number.find(','), 1, ".");
      report.add(
          diagnose("decimal-comma", {{"text", number}, {"readings", point + " or " + list}}).at(place));
      take_apart(tokens, index);
      return;
    }
    report.add(diagnose("comma-without-blank", {{"text", number}, {"list", list}})
                   .at(place)
                   .edit(place, list, "write " + list));
    take_apart(tokens, index);
    return;
  }

  const std::size_t next = tokens.type_at(index + 1);
  const bool with_unit =
      next == RigLexer::NAME || next == RigLexer::COMPOUND_UNIT || next == RigLexer::PERCENT;
  const Span place =
      with_unit ? cover(tokens.span(token), tokens.span(tokens.at(index + 1))) : tokens.span(token);
  const std::string text(tokens.source().text(place));
  const std::string unit = text.substr(number.size());
  QuantityError refusal = refusal_of(text, with_unit);
  std::vector<std::string>& readings = refusal.suggestions;
  if (std::string date = as_date(number); !date.empty())
    readings.insert(readings.begin(), std::move(date));
  if (std::string difference = as_difference(number); !difference.empty())
    readings.push_back(difference + unit);
  if (!list.empty() && where != NumberPlace::setting)
    readings.push_back(list + unit);

  if (std::string blanks = as_list(number, ' ');
      readings.empty() && !blanks.empty() && where != NumberPlace::setting)
    readings.push_back(blanks + unit);
  if (readings.empty()) {
    report.add(diagnose("unreadable-number", {{"text", number}}).at(place));
  } else {
    const std::string_view slug = refusal.kind == QuantityError::Kind::decimal_comma   ? "decimal-comma"
                                  : refusal.kind == QuantityError::Kind::spaced_number ? "spaced-number"
                                                                                       : "malformed-number";
    auto finding = diagnose(slug, {{"text", number}, {"readings", alternatives(readings)}}).at(place);
    report.add(are_thousands(number, slug, readings.size(), where)
                   ? std::move(finding).certain_edit(place, readings.front(), "write " + readings.front())
                   : std::move(finding).edit(place, readings.front(), "write " + readings.front()));
  }
  // Where a plain number has to stand, the rest of the line can be read as if it stood there.
  if (next == RigLexer::TIMES || (index > 0 && tokens.type_at(index - 1) == RigLexer::LANGUAGE))
    token.set_type(RigLexer::NUMBER);
}

} // namespace sheerpole
