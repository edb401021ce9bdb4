#pragma once

#include "base/result.hpp"
#include "source/source_text.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>

namespace sheerpole {

/// The only way in which the compiler reads files, so that an editor or a test can hand over texts in
/// memory.
class FileReader {
public:
  enum class Failure { not_found, not_readable, is_folder, too_large };

  virtual ~FileReader() = default;
  /// The whole file, or why not. `limit` is in bytes; a longer file is too_large and is not read.
  virtual Result<std::string, Failure> read(const std::string& path, std::size_t limit) = 0;
  /// The path without `.` and `..`, and on a disk with its links followed.
  virtual std::string real_path(const std::string& path);
};

/// Reads from the disk.
class DiskFileReader final : public FileReader {
public:
  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override;
  std::string real_path(const std::string& path) override;
};

/// One text in memory, by the name that it goes under; there is no other file.
class OneTextReader final : public FileReader {
public:
  OneTextReader(std::string path, std::string_view text) : path_(std::move(path)), text_(text) {}
  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
    if (path != path_)
      return Failure::not_found;
    if (text_.size() > limit)
      return Failure::too_large;
    return std::string(text_);
  }
  std::string real_path(const std::string& path) override { return path; }

private:
  std::string path_;
  std::string_view text_; ///< has to outlive the reader
};

/// Largest rig file that is read; a rig is some kilobytes.
inline constexpr std::size_t largest_source_bytes = 4 * 1024 * 1024;

struct LoadFailure {
  enum class Kind { not_found, not_readable, is_folder, too_large, not_utf8 };
  Kind kind = Kind::not_found;
  std::uint32_t line = 0; ///< for not_utf8: the line of the first bad byte, from 1
};

/// Reads a file, drops a leading byte order mark and makes sure that it is UTF-8.
Result<SourceText, LoadFailure> load(const std::string& path, SourceId id, FileReader& reader);

/// Offset of the first byte that is not valid UTF-8 (overlong forms and surrogates are not), or npos.
std::size_t first_invalid_utf8(std::string_view bytes);

} // namespace sheerpole
