#include "driver/find/sought.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

char small(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Letters, figures and everything beyond ASCII.
bool is_of_word(char c) {
  return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
}

/// The day in "before 2016-05-01" and "older than 2016-05-01"; empty text: it begins in another way.
std::string_view day_in(std::string_view text) {
  for (const std::string_view beginning : {"before ", "older than "})
    if (text.starts_with(beginning))
      return text.substr(beginning.size());
  return {};
}

} // namespace

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> words(1);
  for (const char c : text) {
    if (is_of_word(small(c)))
      words.back() += small(c);
    else if (!words.back().empty())
      words.emplace_back();
  }
  if (words.back().empty())
    words.pop_back();
  return words;
}

Result<Sought, std::string> read_sought(const std::string& text) {
  Sought sought;
  sought.text = text;
  if (const std::string_view day = day_in(text); !day.empty()) {
    sought.before = parse_day(day);
    if (!sought.before)
      return "sheerpole: `" + text + "` needs a day such as 2016-05-01\n";
    return sought;
  }
  sought.words = words_of(text);
  if (sought.words.empty())
    return std::string("sheerpole: nothing is named that could be found; name a part, a kind, a size, a "
                       "batch or `before 2016-05-01`\n");
  if (auto size = parse_named_size(text); size.ok())
    sought.size = std::move(size.value());
  if (auto thread = parse_thread(text); thread.ok())
    sought.thread = std::move(thread.value());
  return sought;
}

bool is_sought(const Sought& sought, std::string_view text) {
  return std::equal(text.begin(), text.end(), sought.text.begin(), sought.text.end(),
                    [](char a, char b) { return small(a) == small(b); });
}

bool has_sought_words(const Sought& sought, std::string_view text) {
  if (sought.words.empty() || sought.size || sought.thread)
    return false;
  const std::vector<std::string> words = words_of(text);
  return std::all_of(sought.words.begin(), sought.words.end(), [&](const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
  });
}

bool is_sought_size(const Sought& sought, const NamedSize& size) {
  return sought.size && same_size(*sought.size, size);
}

bool is_sought_thread(const Sought& sought, const Thread& thread) {
  constexpr double micrometre = 1e-6;
  const auto alike = [](Length a, Length b) { return std::abs((a - b).metres()) <= micrometre; };
  if (sought.thread && sought.thread->standard == thread.standard &&
      alike(sought.thread->diameter, thread.diameter) && alike(sought.thread->pitch, thread.pitch))
    return true;
  const bool inch = thread.standard.starts_with("ASME");
  return is_sought_size(
      sought,
      {thread.designation, inch ? NamedSize::System::inch : NamedSize::System::metric, thread.diameter});
}

} // namespace sheerpole
