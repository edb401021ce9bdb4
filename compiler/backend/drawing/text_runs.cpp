#include "backend/drawing/text_runs.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace sheerpole {

namespace {

bool digit(char sign) {
  return sign >= '0' && sign <= '9';
}

/// The number of one or two figures that is all of the text; else 0.
int small_number(std::string_view text) {
  if (text.empty() || text.size() > 2)
    return 0;
  int value = 0;
  for (const char sign : text)
    value = 10 * value + (sign - '0');
  return value;
}

/// Inches stand here.
bool begins_with_inches(std::string_view text) {
  if (text.starts_with('"') || text.starts_with("\u2033"))
    return true;
  if (!text.starts_with(" in"))
    return false;
  const char behind = text.size() > 3 ? text[3] : ' ';
  return !digit(behind) && !(behind >= 'a' && behind <= 'z');
}

/// Where a fraction round a slash begins and ends.
struct Fraction {
  std::size_t begin, slash, end;
};

std::optional<Fraction> fraction_at(std::string_view text, std::size_t slash) {
  std::size_t begin = slash;
  while (begin > 0 && digit(text[begin - 1]))
    --begin;
  std::size_t end = slash + 1;
  while (end < text.size() && digit(text[end]))
    ++end;
  // "3.1/2", "a1/2" and "1/1/2" are none.
  if (begin > 0 && text[begin - 1] != ' ' && text[begin - 1] != '(' && text[begin - 1] != '-' &&
      text[begin - 1] != '+')
    return std::nullopt;
  const int above = small_number(text.substr(begin, slash - begin));
  const int below = small_number(text.substr(slash + 1, end - slash - 1));
  constexpr std::array parts{2, 4, 8, 16, 32, 64};
  if (above == 0 || above >= below || std::find(parts.begin(), parts.end(), below) == parts.end() ||
      !begins_with_inches(text.substr(end)))
    return std::nullopt;
  return Fraction{begin, slash, end};
}

} // namespace

std::vector<TextRun> runs_of(std::string_view text) {
  using enum TextRun::Place;
  std::vector<TextRun> runs;
  std::size_t written = 0;
  for (std::size_t slash = text.find('/'); slash != std::string_view::npos;
       slash = text.find('/', slash + 1)) {
    const auto found = fraction_at(text, slash);
    if (!found)
      continue;
    if (found->begin > written)
      runs.push_back({text.substr(written, found->begin - written), on_line});
    runs.push_back({text.substr(found->begin, slash - found->begin), above});
    runs.push_back({text.substr(slash, 1), on_line});
    runs.push_back({text.substr(slash + 1, found->end - slash - 1), below});
    written = found->end;
  }
  if (written < text.size() || runs.empty())
    runs.push_back({text.substr(written), on_line});
  return runs;
}

std::size_t small_figures_in(std::string_view text) {
  std::size_t count = 0;
  for (std::size_t slash = text.find('/'); slash != std::string_view::npos;
       slash = text.find('/', slash + 1))
    if (const auto found = fraction_at(text, slash))
      count += found->end - found->begin - 1;
  return count;
}

} // namespace sheerpole
