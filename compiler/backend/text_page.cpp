#include "backend/text_page.hpp"

#include "base/code_point.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr char unbroken_blank = '\x01'; // one column wide, and in no text of a rig file that was accepted

std::string blanks_up_to(std::string_view text, std::size_t columns) {
  return std::string(columns - std::min(columns, screen_columns(text)), ' ');
}

} // namespace

void TextPage::line(std::string_view text) {
  for (const char sign : text)
    text_ += sign == unbroken_blank ? ' ' : sign;
  text_.erase(text_.find_last_not_of(' ') + 1);
  text_ += '\n';
}

void TextPage::rule(char sign) {
  line(std::string(width, sign));
}

void TextPage::ends(std::string_view left, std::string_view right) {
  const std::size_t room = width - std::min(width, screen_columns(right));
  line(padded(left, room) + std::string(right));
}

void TextPage::wrapped(std::string_view lead, std::string_view text) {
  const std::size_t columns = screen_columns(lead);
  std::string first(lead);
  for (const std::string& part : wrap_text(text, width - std::min(width, columns))) {
    line(first + part);
    first.assign(columns, ' ');
  }
}

std::string kept_together(std::string_view text) {
  std::string result(text);
  std::replace(result.begin(), result.end(), ' ', unbroken_blank);
  return result;
}

std::string padded(std::string_view text, std::size_t columns) {
  return std::string(text) + blanks_up_to(text, columns);
}

std::string padded_left(std::string_view text, std::size_t columns) {
  return blanks_up_to(text, columns) + std::string(text);
}

std::string name_and_amount(std::string_view name, std::string_view amount, std::size_t name_columns,
                            std::size_t amount_columns) {
  const std::size_t used = screen_columns(name);
  const std::size_t whole = std::max(name_columns, used) + amount_columns;
  const std::size_t apart = name.empty() ? 0 : 1;
  return std::string(name) + padded_left(amount, std::max(whole - used, screen_columns(amount) + apart));
}

} // namespace sheerpole
