#include "syntax/word_gaps.hpp"

namespace sheerpole {

namespace {

/// Whether a minus behind this one belongs to the number, name or bracket that follows: nothing has come
/// that it could be taken from.
bool value_begins_behind(WordKind before) {
  switch (before) {
  case WordKind::opens_block:
  case WordKind::opens_bracket:
  case WordKind::comma:
  case WordKind::colon:
  case WordKind::minus:
  case WordKind::sign:
    return true;
  default:
    return false;
  }
}

} // namespace

std::vector<bool> word_gaps(const std::vector<WrittenWord>& words) {
  std::vector<bool> gaps(words.size(), true);
  WordKind before = WordKind::opens_block; // comments do not count
  bool of_what_follows = false;            // the word before is a minus that belongs to this one
  for (std::size_t i = 0; i < words.size(); ++i) {
    const WordKind kind = words[i].kind;
    if (kind == WordKind::comment)
      continue;
    switch (kind) {
    case WordKind::comma:
    case WordKind::colon:
    case WordKind::point:
    case WordKind::closes_bracket:
      gaps[i] = false;
      break;
    case WordKind::name_or_unit:
      // `12mm` and `12 mm` are both the author's: a quantity is not touched.
      if (before == WordKind::number)
        gaps[i] = words[i].blank_before;
      break;
    default:
      break;
    }
    if (before == WordKind::point || before == WordKind::opens_bracket || of_what_follows)
      gaps[i] = false;
    of_what_follows = kind == WordKind::minus && value_begins_behind(before);
    before = kind;
  }
  return gaps;
}

} // namespace sheerpole
