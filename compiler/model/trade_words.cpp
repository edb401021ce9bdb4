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

struct PlacedWord {
  std::string small;
  std::size_t begin = 0;
  std::size_t end = 0;
};

std::vector<PlacedWord> placed_words(std::string_view text) {
  std::vector<PlacedWord> words;
  bool digits = false;
  bool open = false;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const char c = text[at];
    const bool digit = c >= '0' && c <= '9';
    const bool upper = c >= 'A' && c <= 'Z';
    const bool letter = upper || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
    if (!digit && !letter) {
      open = false;
      continue;
    }
    if (!open || digit != digits)
      words.push_back({{}, at, at});
    open = true;
    digits = digit;
    words.back().small += upper ? static_cast<char>(c - 'A' + 'a') : c;
    words.back().end = at + 1;
  }
  return words;
}

/// "pin" and "pins", "braid" and "braids".
bool is_word_or_plural(std::string_view written, std::string_view word) {
  return written == word ||
         (written.size() == word.size() + 1 && written.starts_with(word) && written.back() == 's');
}

bool stands_in(const std::vector<PlacedWord>& text, const std::vector<std::string>& phrase) {
  for (std::size_t at = 0; at + phrase.size() <= text.size(); ++at) {
    bool all = true;
    for (std::size_t i = 0; all && i < phrase.size(); ++i)
      all = is_word_or_plural(text[at + i].small, phrase[i]);
    if (all)
      return true;
  }
  return false;
}

bool begins_with_denial(const std::vector<PlacedWord>& words) {
  static constexpr std::array<std::string_view, 7> denials{"no",      "not", "none",   "never",
                                                           "without", "non", "nothing"};
  return !words.empty() && std::find(denials.begin(), denials.end(), words.front().small) != denials.end();
}

std::string in_small(std::string_view text) {
  std::string small;
  for (const char c : text)
    small += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return small;
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
    const bool in_use = std::any_of(known.begin(), known.end(), [&](std::string_view one) {
      const std::vector<std::string> parts = words_in_text(one);
      return std::any_of(parts.begin(), parts.end(),
                         [&](const std::string& part) { return is_word_or_plural(word.small, part); });
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
  const bool speaks = std::any_of(known.begin(), known.end(), [&](std::string_view phrase) {
    return stands_in(words, words_in_text(phrase));
  });
  if (answer == Answer::stated && speaks && !(of_holding && begins_with_denial(words)))
    return of_holding ? std::nullopt : misspelt(known, text, words);
  return OddText{std::string(text),
                 answer == Answer::stated ? near_word(known, in_small(text)) : std::string()};
}

} // namespace sheerpole
