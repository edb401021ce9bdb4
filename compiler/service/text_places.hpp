#pragma once

#include "source/source_text.hpp"

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

namespace sheerpole::service {

/// One place in a text, in all the ways in which programs count.
struct TextPlace {
  std::uint32_t line = 0;      ///< from 0
  std::uint32_t character = 0; ///< UTF-16 code units from the beginning of the line
  std::uint32_t byte = 0;      ///< bytes of UTF-8 from the beginning of the text
  std::uint32_t unit = 0;      ///< UTF-16 code units from the beginning of the text
};

struct TextRange {
  TextPlace begin;
  TextPlace end;
};

/// What the place in a line is counted in, for those who agree on something else than UTF-16.
enum class Counted { utf16, utf8, utf32 };

/// The lines of a text, as editors see them: a line ends with a line feed, a carriage return, or both. A
/// byte order mark belongs to the text. Whatever is asked for beyond an end is that end; what is asked for
/// inside a sign is the beginning of the sign.
class TextPlaces {
public:
  /// The text has to be there as long as this is.
  explicit TextPlaces(std::string_view bytes);

  TextPlace at_byte(std::size_t byte) const;
  TextPlace at_unit(std::size_t unit) const;
  TextPlace at_line(std::size_t line, std::size_t character, Counted counted = Counted::utf16) const;
  /// How far the place is from the beginning of its line, counted in another way.
  std::uint32_t character(const TextPlace& place, Counted counted) const;

  std::size_t line_count() const { return lines_.size(); }

private:
  struct Line {
    std::uint32_t byte; ///< of its first sign
    std::uint32_t unit;
  };
  /// Goes from the beginning of a line to where `there` says so, at most to the end of the line.
  template <class There>
  TextPlace walk(std::size_t line, const There& there) const;

  std::string_view bytes_;
  std::vector<Line> lines_;
};

/// Bytes before those that the compiler counts from: those of a byte order mark.
inline std::uint32_t bytes_of_mark(const SourceText& text) {
  return text.marked() ? 3 : 0;
}

} // namespace sheerpole::service
