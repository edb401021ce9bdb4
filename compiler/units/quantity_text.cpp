#include "units/quantity_text.hpp"

#include "units/format_length.hpp"
#include "units/unit.hpp"

#include <algorithm>
#include <numbers>

namespace sheerpole {

namespace {

bool digit(char sign) {
  return sign >= '0' && sign <= '9';
}

/// What stands between the blanks before and behind one blank.
std::string_view word_before(std::string_view text, std::size_t blank) {
  const std::size_t earlier = blank == 0 ? std::string_view::npos : text.rfind(' ', blank - 1);
  const std::size_t begin = earlier == std::string_view::npos ? 0 : earlier + 1;
  return text.substr(begin, blank - begin);
}
std::string_view word_behind(std::string_view text, std::size_t blank) {
  return text.substr(blank + 1, std::min(text.find(' ', blank + 1), text.size()) - blank - 1);
}

/// "1/2", "11/16\",": the fraction of a mixed number.
bool begins_with_fraction(std::string_view word) {
  const std::size_t slash = word.find('/');
  return slash != std::string_view::npos && slash > 0 && slash + 1 < word.size() &&
         std::all_of(word.begin(), word.begin() + static_cast<std::ptrdiff_t>(slash), digit) &&
         digit(word[slash + 1]);
}

bool is_sign(std::string_view word) {
  return word == "+" || word == "-" || word == "\u00b1" || word == "\u2212";
}

/// "X", "X(cap-shroud.port)", the body of which a card says by how much a mark is beyond it.
bool may_be_added_to(std::string_view word) {
  if (word.starts_with('('))
    word.remove_prefix(1);
  return word == "X" || word == "body" || (word.starts_with("X(") && word.ends_with(')'));
}

/// Most blanks of a text stand between two words, which two bytes tell: the one before is the last of no
/// number, no mark of feet and no sign (`+`, `-`, U+00B1, U+2212), and the one behind begins no sign.
bool may_not_be_in_quantity(std::string_view text, std::size_t blank) {
  if (blank == 0 || blank + 1 >= text.size())
    return true;
  const char last = text[blank - 1];
  const char next = text[blank + 1];
  return !digit(last) && last != '\'' && last != '+' && last != '-' && last != '\xb1' && last != '\x92' &&
         next != '+' && next != '-' && next != '\xc2' && next != '\xe2';
}

} // namespace

bool blank_in_quantity(std::string_view text, std::size_t blank) {
  if (may_not_be_in_quantity(text, blank))
    return false;
  const std::string_view before = word_before(text, blank);
  std::string_view behind = word_behind(text, blank);
  if (before.empty() || behind.empty())
    return false;
  if (is_sign(before))
    return digit(behind.front());
  if (is_sign(behind))
    return may_be_added_to(before) || behind == "\u00b1";
  if (before.back() == '\'' || (digit(before.back()) && begins_with_fraction(behind)))
    return digit(behind.front());
  if (!digit(before.back()))
    return false;
  while (!behind.empty() && std::string_view(".,;:)").find(behind.back()) != std::string_view::npos)
    behind.remove_suffix(1);
  return find_unit(behind) != nullptr;
}

std::string trimmed_number(double value, int decimals) {
  std::string text = format_fixed(value, decimals);
  if (text.find('.') == std::string::npos)
    return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.')
    text.pop_back();
  return text;
}

std::string in_threes(std::string_view number) {
  std::string text(number);
  const std::size_t begin = text.starts_with('-') ? 1 : 0;
  std::size_t end = begin;
  while (end < text.size() && digit(text[end]))
    ++end;
  if (end - begin > 4)
    for (std::size_t at = end; at > begin + 3;)
      text.insert(at -= 3, thin_blank);
  return text;
}

std::string without_thin_blanks(std::string text) {
  for (std::size_t at = text.find(thin_blank); at != std::string::npos; at = text.find(thin_blank, at))
    text.erase(at, thin_blank.size());
  return text;
}

std::string length_text(Length length) {
  return trimmed_number(length.millimetres(), 2) + " mm";
}

std::string percent_text(double share) {
  return trimmed_number(share * 100.0, 1) + " %";
}

std::string share_text(double share) {
  return format_fixed(share, 3);
}

std::string times_text(double ratio) {
  return format_fixed(ratio, 2);
}

std::string force_text(Force force) {
  if (force < Force::kilonewtons(1.0) && force > Force::kilonewtons(-1.0))
    return format_fixed(force.newtons(), 0) + " N";
  return trimmed_number(force.kilonewtons(), 2) + " kN";
}

std::string angle_text(double radians) {
  return trimmed_number(radians * 180.0 / std::numbers::pi, 1) + " deg";
}

std::string temperature_text(double kelvin) {
  return format_fixed(kelvin - 273.15, 0) + " degC";
}

} // namespace sheerpole
