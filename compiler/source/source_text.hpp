#pragma once

#include "source/span.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Line and column counted from 1; the column counts code points, as an editor shows them.
struct Position {
  std::uint32_t line = 1;
  std::uint32_t column = 1;
};

/// One rig file in memory: valid UTF-8, immutable, with an index of its lines.
class SourceText {
public:
  /// `name` is the path as the user wrote it, used in messages. `bytes` must be valid UTF-8 (see load()).
  /// `marked`: a byte order mark stood before them in the file.
  SourceText(SourceId id, std::string name, std::string bytes, bool marked = false);

  SourceId id() const { return id_; }
  const std::string& name() const { return name_; }
  std::string_view bytes() const { return bytes_; }
  /// As they lie in the file, with its byte order mark.
  std::string file_bytes() const { return (marked_ ? "\xEF\xBB\xBF" : "") + bytes_; }
  bool marked() const { return marked_; }
  std::string_view text(Span span) const;
  Position position(std::uint32_t offset) const;
  /// The line with this number (from 1) without its line end.
  std::string_view line(std::uint32_t number) const;
  std::uint32_t line_count() const { return static_cast<std::uint32_t>(line_starts_.size()); }
  /// Byte offset at which the line begins.
  std::uint32_t line_start(std::uint32_t number) const;

private:
  SourceId id_;
  std::string name_;
  std::string bytes_;
  bool marked_ = false;
  std::vector<std::uint32_t> line_starts_;
};

} // namespace sheerpole
