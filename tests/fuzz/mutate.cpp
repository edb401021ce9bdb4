#include "fuzz/mutate.hpp"

#include <algorithm>

namespace sheerpole::fuzz {

namespace {

bool of_word(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' ||
         c == '_' || c == '.';
}

struct Piece {
  std::size_t begin = 0;
  std::size_t end = 0;
};

/// The word, the run of blanks or the sign that lies at a place.
Piece piece_at(std::string_view text, std::size_t at) {
  Piece piece{at, at + 1};
  if (!of_word(text[at]))
    return piece;
  while (piece.begin > 0 && of_word(text[piece.begin - 1]))
    --piece.begin;
  while (piece.end < text.size() && of_word(text[piece.end]))
    ++piece.end;
  return piece;
}

Piece line_at(std::string_view text, std::size_t at) {
  const std::size_t before = at == 0 ? std::string_view::npos : text.rfind('\n', at - 1);
  const std::size_t end = text.find('\n', at);
  return {before == std::string_view::npos ? 0 : before + 1,
          end == std::string_view::npos ? text.size() : end + 1};
}

/// From the line at a place to the end of the bracket that opens behind it; the line alone when none does.
Piece block_at(std::string_view text, std::size_t at) {
  Piece block = line_at(text, at);
  int depth = 0;
  for (std::size_t i = block.begin; i < text.size(); ++i) {
    depth += text[i] == '{' || text[i] == '[' ? 1 : text[i] == '}' || text[i] == ']' ? -1 : 0;
    if (depth <= 0 && i + 1 >= block.end)
      return {block.begin, i + 1};
  }
  return block;
}

/// The next place that stands in no bracket and begins a line; the end of the text where there is none.
std::size_t between_blocks(std::string_view text, std::size_t at) {
  int depth = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (i >= at && depth <= 0 && (i == 0 || text[i - 1] == '\n'))
      return i;
    depth += text[i] == '{' || text[i] == '[' ? 1 : text[i] == '}' || text[i] == ']' ? -1 : 0;
  }
  return text.size();
}

constexpr std::string_view odd_numbers[] = {
    "0",     "-1",        "1",   "0.5", "1e308", "1e-308",    "9999999999999", "3/0",
    "7 3/8", "1_000_000", "NaN", "99",  "1000",  "0.0000001", "2-3/4",         "12345.6789"};

/// One change.
void change(std::string& text, std::string_view other, const Material& material, Dice& dice) {
  const std::vector<std::string>& words = material.words;
  const auto put = [&](Piece piece, std::string_view with) {
    text.replace(piece.begin, piece.end - piece.begin, with);
  };
  if (text.empty()) {
    text = words.empty() ? "x" : words[dice.below(words.size())];
    return;
  }
  const std::size_t at = dice.below(text.size());
  switch (dice.below(14)) {
  case 0:
  case 1: // another word
    if (!words.empty())
      put(piece_at(text, at), words[dice.below(words.size())]);
    break;
  case 2: // one word more
    if (!words.empty())
      put({at, at}, words[dice.below(words.size())]);
    break;
  case 3: // a number
    for (std::size_t i = at; i < text.size(); ++i)
      if (text[i] >= '0' && text[i] <= '9') {
        put(piece_at(text, i), odd_numbers[dice.below(std::size(odd_numbers))]);
        break;
      }
    break;
  case 4: // a line or a block twice
  case 5: {
    const Piece piece = dice.below(2) == 0 ? line_at(text, at) : block_at(text, at);
    const std::string copy = text.substr(piece.begin, piece.end - piece.begin);
    put({piece.end, piece.end}, copy);
    break;
  }
  case 6: // or not at all
    put(dice.below(2) == 0 ? line_at(text, at) : block_at(text, at), "");
    break;
  case 7: // a word of the same text
    put(piece_at(text, at), [&] {
      const Piece piece = piece_at(text, dice.below(text.size()));
      return text.substr(piece.begin, piece.end - piece.begin);
    }());
    break;
  case 8: // a block of another text
    if (!other.empty()) {
      const Piece piece = block_at(other, dice.below(other.size()));
      put({line_at(text, at).begin, line_at(text, at).begin},
          other.substr(piece.begin, piece.end - piece.begin));
    }
    break;
  case 9: // a byte
    text[at] = static_cast<char>(dice.below(256));
    break;
  case 10: // the end
    text.resize(at);
    break;
  case 11: // a piece that is new, beside the others or inside one
    if (material.piece != nullptr) {
      const std::size_t place = dice.below(4) == 0 ? line_at(text, at).end : between_blocks(text, at);
      put({place, place}, material.piece(dice));
    }
    break;
  case 12: { // a block in another place
    const Piece piece = block_at(text, at);
    const std::string moved = text.substr(piece.begin, piece.end - piece.begin);
    put(piece, "");
    const std::size_t place = text.empty() ? 0 : line_at(text, dice.below(text.size())).begin;
    put({place, place}, moved);
    break;
  }
  case 13: { // many times the same: what grows faster than the text is found by these
    const Piece piece = line_at(text, at);
    const std::string copy = text.substr(piece.begin, piece.end - piece.begin);
    std::string copies;
    for (std::size_t times = std::size_t{1} << dice.below(8); times > 0; --times)
      copies += copy;
    put({piece.end, piece.end}, copies);
    break;
  }
  }
}

} // namespace

std::uint64_t Dice::next() {
  std::uint64_t z = (state_ += 0x9e3779b97f4a7c15ULL);
  z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
  z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
  return z ^ (z >> 31U);
}

std::string mutated(std::string_view text, std::string_view other, const Material& material, Dice& dice,
                    std::size_t longest) {
  std::string result(text);
  for (std::size_t changes = 1 + dice.below(4); changes > 0; --changes)
    change(result, other, material, dice);
  if (result.size() > longest)
    result.resize(longest);
  return result;
}

} // namespace sheerpole::fuzz
