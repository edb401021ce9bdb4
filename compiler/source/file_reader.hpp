#pragma once

#include "base/result.hpp"

#include <string>

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

} // namespace sheerpole
