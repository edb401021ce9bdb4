#include "model/trade_words.hpp"

#include "base/edit_distance.hpp"
#include "model/stated.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>

namespace sheerpole {

namespace {

// Common practice, no source.
constexpr std::string_view securing_words[] = {
    "split pin",      "split ring",  "ring",          "cotter pin",  "cotter",      "seizing wire",
    "locking wire",   "wire",        "lock nut",      "locking nut", "locknut",     "nut",
    "circlip",        "clip",        "R-clip",        "spring pin",  "roll pin",    "locking pin",
    "linch pin",      "linchpin",    "safety pin",    "hairpin",     "bolt",        "grub screw",
    "set screw",      "locking bar", "locking plate", "tab washer",  "peened",      "riveted",
    "seized",         "seizing",     "moused",        "mousing",     "lashed",      "lashing",
    "welded",         "thread lock", "thread locker", "threadlock",  "locking tab", "locking screw",
    "locking sleeve", "locking ring"};
constexpr std::string_view locking_words[] = {
    "lock stitch",    "lock-stitched", "stitch",  "stitched", "stitching", "sewn",    "sewing",
    "whipping",       "whipped",       "seizing", "seized",   "tucked",    "tuck",    "tucks",
    "passed through", "parts passed",  "passed",  "serving",  "served",    "crossed", "twine"};
constexpr std::string_view grade_words[] = {
    "316 stainless", "304 stainless", "stainless",  "316",       "304",       "2205",
    "duplex",        "galvanised",    "galvanized", "steel",     "bronze",    "titanium",
    "carbon",        "HMPE",          "aramid",     "polyester", "polyamide", "PBO",
    "aluminium",     "grade 30",      "grade 40",   "grade 43",  "grade 70",  "high tensile"};
// A construction is read for what it says of strands, lay, fibre, heat and core.
constexpr std::string_view construction_words[] = {
    "strand",        "strands",    "plait",     "plaited",     "braid",     "braided",
    "laid",          "twisted",    "hollow",    "double",      "single",    "covered",
    "cover",         "core",       "cored",     "parallel",    "HMPE",      "UHMWPE",
    "aramid",        "LCP",        "polyester", "PES",         "polyamide", "nylon",
    "PBO",           "steel",      "stainless", "cord",        "heat-set",  "heatset",
    "polypropylene", "galvanised", "rod",       "solid",       "wire",      "chain",
    "link",          "short link", "long link", "cold-headed", "compacted", "webbing",
    "three",         "eight",      "twelve",    "heat",        "x"};

/// A letter, or a byte of one that is not of ASCII.
bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

char small_letter(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// The words and numbers of a text one by one. Nothing is copied: every text is held against every word of
/// the trade.
class WordsOf {
public:
  explicit WordsOf(std::string_view text) : text_(text) {}

  /// Whether there is another one, which is then begin() to end().
  bool next() {
    begin_ = end_;
    while (begin_ < text_.size() && !is_digit(text_[begin_]) && !is_letter(text_[begin_]))
      ++begin_;
    end_ = begin_;
    if (begin_ == text_.size())
      return false;
    const bool digits = is_digit(text_[begin_]);
    while (end_ < text_.size() && (digits ? is_digit(text_[end_]) : is_letter(text_[end_])))
      ++end_;
    return true;
  }
  std::size_t begin() const { return begin_; }
  std::size_t end() const { return end_; }
  std::string_view word() const { return text_.substr(begin_, end_ - begin_); }

private:
  std::string_view text_;
  std::size_t begin_ = 0;
  std::size_t end_ = 0;
};

std::string in_small(std::string_view text) {
  std::string small(text);
  std::transform(small.begin(), small.end(), small.begin(), small_letter);
  return small;
}

struct PlacedWord {
  std::string small;
  std::size_t begin = 0;
  std::size_t end = 0;
};

std::vector<PlacedWord> placed_words(std::string_view text) {
  std::vector<PlacedWord> words;
  for (WordsOf each(text); each.next();)
    words.push_back({in_small(each.word()), each.begin(), each.end()});
  return words;
}

/// "pin" and "pins", "braid" and "braids"; `written` is in small letters.
bool is_word_or_plural(std::string_view written, std::string_view word) {
  if (written.size() != word.size() && (written.size() != word.size() + 1 || written.back() != 's'))
    return false;
  return std::equal(word.begin(), word.end(), written.begin(),
                    [](char of_word, char c) { return small_letter(of_word) == c; });
}

bool stands_in(const std::vector<PlacedWord>& text, std::string_view phrase) {
  for (std::size_t at = 0; at < text.size(); ++at) {
    WordsOf words(phrase);
    std::size_t next = at;
    bool all = true;
    while (all && words.next()) {
      all = next < text.size() && is_word_or_plural(text[next].small, words.word());
      ++next;
    }
    if (all)
      return true;
  }
  return false;
}

/// Whether a word is one of those of a phrase.
bool is_word_of(std::string_view written, std::string_view phrase) {
  for (WordsOf words(phrase); words.next();)
    if (is_word_or_plural(written, words.word()))
      return true;
  return false;
}

bool begins_with_denial(const std::vector<PlacedWord>& words) {
  static constexpr std::array<std::string_view, 7> denials{"no",      "not", "none",   "never",
                                                           "without", "non", "nothing"};
  return !words.empty() && std::find(denials.begin(), denials.end(), words.front().small) != denials.end();
}

/// The word of the trade that is nearly this one; empty when none is. `near` is in small letters.
std::string near_word(std::span<const std::string_view> known, const std::string& written) {
  std::vector<std::string> small;
  for (const std::string_view word : known)
    small.push_back(in_small(word));
  const auto found = nearest_name(written, small);
  if (!found)
    return {};
  return std::string(
      known[static_cast<std::size_t>(std::find(small.begin(), small.end(), *found) - small.begin())]);
}

/// Whether one word is the other with a letter wrong: shorter words are near to too many others, unless
/// letters have only changed places.
bool is_slip(std::string written, std::string word) {
  constexpr std::size_t least_letters = 5;
  if (edit_distance(written, word) > 1)
    return false;
  if (written.size() >= least_letters)
    return true;
  std::sort(written.begin(), written.end());
  std::sort(word.begin(), word.end());
  return written == word;
}

/// A word that is none of the trade and nearly one.
std::optional<OddText> misspelt(std::span<const std::string_view> known, std::string_view text,
                                const std::vector<PlacedWord>& words) {
  for (const PlacedWord& word : words) {
    const bool in_use = std::any_of(known.begin(), known.end(), [&](std::string_view phrase) {
      return is_word_of(word.small, phrase);
    });
    const std::string near = in_use ? "" : near_word(known, word.small);
    if (near.empty() || !is_slip(word.small, in_small(near)))
      continue;
    std::string mended(text);
    mended.replace(word.begin, word.end - word.begin, near);
    return OddText{std::string(text.substr(word.begin, word.end - word.begin)), std::move(mended)};
  }
  return std::nullopt;
}

} // namespace

std::span<const std::string_view> trade_words(TradeSubject of) {
  switch (of) {
  case TradeSubject::securing:
    return securing_words;
  case TradeSubject::locking:
    return locking_words;
  case TradeSubject::grade:
    return grade_words;
  case TradeSubject::construction:
    return construction_words;
  }
  return {};
}

std::vector<std::string> words_in_text(std::string_view text) {
  std::vector<std::string> words;
  for (PlacedWord& word : placed_words(text))
    words.push_back(std::move(word.small));
  return words;
}

std::optional<OddText> odd_text(TradeSubject of, std::string_view text) {
  if (text.empty())
    return std::nullopt;
  const bool of_holding = of == TradeSubject::securing || of == TradeSubject::locking;
  const Answer answer = read_stated(text).answer;
  if (of_holding && answer == Answer::nothing)
    return std::nullopt;
  const std::vector<PlacedWord> words = placed_words(text);
  const std::span<const std::string_view> known = trade_words(of);
  const bool speaks = std::any_of(known.begin(), known.end(),
                                  [&](std::string_view phrase) { return stands_in(words, phrase); });
  if (answer == Answer::stated && speaks && !(of_holding && begins_with_denial(words)))
    return of_holding ? std::nullopt : misspelt(known, text, words);
  return OddText{std::string(text),
                 answer == Answer::stated ? near_word(known, in_small(text)) : std::string()};
}

} // namespace sheerpole
