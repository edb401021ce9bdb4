#include "syntax/antlr/lexer_engine.hpp"

#include <lexer_table.hpp>

#include <algorithm>
#include <cstdint>
#include <iterator>

namespace sheerpole {

namespace {

constexpr std::int16_t dead = -1; ///< no token goes on like this

std::size_t class_of(char32_t character) {
  if (character < std::size(lexer_table::ascii_classes))
    return lexer_table::ascii_classes[character];
  return static_cast<std::size_t>(
      std::upper_bound(std::begin(lexer_table::borders), std::end(lexer_table::borders), character) -
      std::begin(lexer_table::borders));
}

/// The code point at `i` of valid UTF-8; moves `i` behind it.
char32_t take_code_point(std::string_view bytes, std::size_t& i) {
  const auto lead = static_cast<unsigned char>(bytes[i++]);
  if (lead < 0x80)
    return lead;
  const int more = lead >= 0xF0 ? 3 : lead >= 0xE0 ? 2 : 1;
  char32_t code = lead & (0x3F >> more);
  for (int k = 0; k < more && i < bytes.size(); ++k)
    code = (code << 6) | (static_cast<unsigned char>(bytes[i++]) & 0x3F);
  return code;
}

} // namespace

LexerMatch match_token(std::u32string_view text, std::size_t begin) {
  LexerMatch result;
  std::int16_t state = 0;
  for (std::size_t i = begin; i < text.size(); ++i) {
    state = lexer_table::steps[static_cast<std::size_t>(state) * lexer_table::classes + class_of(text[i])];
    if (state == dead)
      break;
    if (const std::uint8_t type = lexer_table::accepted[state]; type != 0)
      result = {type, i + 1};
  }
  return result;
}

CodePoints::CodePoints(const SourceText& source) {
  const std::string_view bytes = source.bytes();
  const bool ascii =
      std::all_of(bytes.begin(), bytes.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
  if (ascii) {
    characters_.assign(bytes.begin(), bytes.end());
    return;
  }
  characters_.reserve(bytes.size());
  offsets_.reserve(bytes.size() + 1);
  for (std::size_t i = 0; i < bytes.size();) {
    offsets_.push_back(static_cast<std::uint32_t>(i));
    characters_.push_back(take_code_point(bytes, i));
  }
  offsets_.push_back(static_cast<std::uint32_t>(bytes.size()));
}

} // namespace sheerpole
