#pragma once

#include "source/source_text.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

struct LexerMatch {
  std::size_t type = 0; ///< token type; 0 when nothing fits
  std::size_t end = 0;  ///< behind its last character
};

/// The longest token that begins at `begin`, and of two of one length the one that is first in the grammar.
/// Steps through a table of states and classes of characters that the build works out from the grammar.
LexerMatch match_token(std::u32string_view text, std::size_t begin);

/// The characters of one file, which the lexer counts, and the way back to the bytes of the file.
class CodePoints {
public:
  explicit CodePoints(const SourceText& source);

  std::u32string_view characters() const { return characters_; }
  /// Byte offset at which a character begins; for the place behind the last one, the size of the file.
  std::uint32_t byte_offset(std::size_t character) const {
    return offsets_.empty() ? static_cast<std::uint32_t>(character) : offsets_[character];
  }

private:
  std::u32string characters_;
  std::vector<std::uint32_t> offsets_; ///< empty when every character is one byte
};

} // namespace sheerpole
