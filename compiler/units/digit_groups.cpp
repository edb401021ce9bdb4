#include "units/digit_groups.hpp"

#include "units/text_cursor.hpp"

namespace sheerpole {

namespace {

enum class Separator { none, comma, point, blank, apostrophe };

/// Digits and the separator before them.
struct Group {
  Separator before = Separator::none;
  std::string_view digits;
};

std::string_view take_digits(TextCursor& cursor) {
  const std::size_t start = cursor.position();
  while (cursor.at_digit())
    cursor.move_to(cursor.position() + 1);
  return cursor.since(start);
}

Separator take_separator(TextCursor& cursor) {
  if (cursor.take(','))
    return Separator::comma;
  if (cursor.take('.'))
    return Separator::point;
  if (cursor.take_foot_mark())
    return Separator::apostrophe;
  return cursor.skip_blanks() ? Separator::blank : Separator::none;
}

/// The groups from the cursor on. A separator without digits behind it, and digits that are the top of a
/// fraction behind a blank, are not part of it.
std::vector<Group> take_groups(TextCursor& cursor) {
  std::vector<Group> groups{{Separator::none, take_digits(cursor)}};
  while (true) {
    TextCursor ahead = cursor;
    const Separator separator = take_separator(ahead);
    if (separator == Separator::none || !ahead.at_digit())
      return groups;
    const std::string_view digits = take_digits(ahead);
    if (separator == Separator::blank && ahead.peek() == '/')
      return groups;
    groups.push_back({separator, digits});
    cursor = ahead;
  }
}

bool may_begin_thousands(std::string_view digits) {
  return !digits.empty() && digits.size() <= 3 && digits.front() != '0';
}

/// The groups joined by underscores, when all but the first have three digits and one separator stands
/// between them all; the last may be decimals, set off by another. Empty otherwise.
std::string as_thousands(const std::vector<Group>& groups) {
  if (groups.size() < 2 || !may_begin_thousands(groups.front().digits))
    return {};
  const Separator separator = groups[1].before;
  std::string text(groups.front().digits);
  for (std::size_t i = 1; i < groups.size(); ++i) {
    const bool decimals = i + 1 == groups.size() && groups[i].before != separator &&
                          (groups[i].before == Separator::comma || groups[i].before == Separator::point);
    if (!decimals && (groups[i].before != separator || groups[i].digits.size() != 3))
      return {};
    text += decimals ? '.' : '_';
    text += groups[i].digits;
  }
  return text;
}

} // namespace

std::vector<std::string> readings_of_digit_groups(std::string_view text) {
  TextCursor cursor(text);
  while (!cursor.at_end()) {
    if (!cursor.at_digit()) {
      cursor.move_to(cursor.position() + 1);
      continue;
    }
    const std::size_t start = cursor.position();
    const std::vector<Group> groups = take_groups(cursor);
    if (groups.size() < 2)
      continue;
    std::vector<std::string> numbers;
    if (groups.size() == 2 && groups[1].before == Separator::comma)
      numbers.push_back(std::string(groups[0].digits) + '.' + std::string(groups[1].digits));
    // One point before three digits is a decimal, and was read as one.
    const bool plain_decimal = groups.size() == 2 && groups[1].before == Separator::point;
    if (std::string thousands = as_thousands(groups); !thousands.empty() && !plain_decimal)
      numbers.push_back(std::move(thousands));
    if (numbers.empty())
      continue;
    for (std::string& number : numbers)
      number = std::string(text.substr(0, start)).append(number).append(cursor.rest());
    return numbers;
  }
  return {};
}

} // namespace sheerpole
