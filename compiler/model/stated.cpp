#include "model/stated.hpp"

#include <algorithm>
#include <array>

namespace sheerpole {

namespace {

constexpr std::array none_words{"none",    "no",      "nothing",   "nil",         "not",       "never",
                                "without", "not any", "unsecured", "not secured", "not locked"};
constexpr std::array empty_words{"yes",  "y",         "ok",         "okay",          "good",     "fine",
                                 "done", "?",         "??",         "???",           "-",        "--",
                                 "n/a",  "na",        "tbd",        "tba",           "todo",     "unknown",
                                 "x",    "not known", "not stated", "to be checked", "as usual", "usual"};

std::string bare(std::string_view text) {
  const auto is_edge = [](char c) { return c == ' ' || c == '\t' || c == '.' || c == '!'; };
  while (!text.empty() && is_edge(text.front()))
    text.remove_prefix(1);
  while (!text.empty() && is_edge(text.back()))
    text.remove_suffix(1);
  std::string result(text);
  for (char& c : result)
    if (c >= 'A' && c <= 'Z')
      c = static_cast<char>(c - 'A' + 'a');
  return result;
}

template <class Words>
bool is_one_of(const std::string& word, const Words& words) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

} // namespace

bool says_nothing(std::string_view text) {
  const std::string word = bare(text);
  return (word.empty() && !text.empty()) || is_one_of(word, empty_words);
}

Stated read_stated(std::string_view text) {
  const std::string word = bare(text);
  if (word.empty() || is_one_of(word, empty_words))
    return {Answer::unstated, std::string(text)};
  return {is_one_of(word, none_words) ? Answer::nothing : Answer::stated, std::string(text)};
}

} // namespace sheerpole
