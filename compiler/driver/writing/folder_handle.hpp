#pragma once

#include "base/result.hpp"

#include <string>
#include <string_view>
#include <sys/stat.h>
#include <utility>

namespace sheerpole {

/// What makes a file the same file under any name: the device and the number on it.
using FileIdentity = std::pair<dev_t, ino_t>;

/// A folder that is held open, so that what is done in it is done there whatever becomes of its path. Every
/// call that fails gives the number of the reason, as `errno` does.
class FolderHandle {
public:
  FolderHandle() = default;
  /// The folder of this path; a link in the path is followed, since whoever named it meant it. Its number
  /// is negative when it could not be opened.
  explicit FolderHandle(const std::string& path);
  ~FolderHandle();
  FolderHandle(FolderHandle&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  FolderHandle& operator=(FolderHandle&& other) noexcept {
    std::swap(number_, other.number_);
    return *this;
  }
  FolderHandle(const FolderHandle&) = delete;
  FolderHandle& operator=(const FolderHandle&) = delete;

  bool is_open() const { return number_ >= 0; }

  /// The folder of this name inside, made when it is not there. A link is not followed: it could lead out.
  Result<FolderHandle, int> inside(const std::string& name) const;

  /// Keeps others from writing here until this handle is closed. Waits for one that does, for a minute at
  /// most; on a file system without locks it goes on without. False when somebody else still writes.
  bool lock() const;

  /// Writes a file that must not be there yet. 0, or why not.
  int make_file(const std::string& name, std::string_view bytes) const;

  /// 0, or why not. The old file keeps its name until the new one has it.
  int rename(const std::string& from, const std::string& to) const;

  /// Gives the file a second name; where the file system has no second names it is moved there, which
  /// `moved` tells.
  int keep_as(const std::string& name, const std::string& second, bool& moved) const;

  int remove(const std::string& name) const;

  /// What lies there under a name, a link itself and not where it leads. The reason is ENOENT when nothing
  /// does.
  Result<struct stat, int> look(const std::string& name) const;

private:
  explicit FolderHandle(int number) : number_(number) {}

  int number_ = -1;
};

/// Writes all of it to an open file, however many calls that takes. 0, or the number of the reason why not
/// (`errno`).
int write_whole(int file, std::string_view bytes);

/// The file behind a path, links followed. `found` is false when there is none.
struct FoundIdentity {
  bool found = false;
  FileIdentity identity;
};
FoundIdentity identity_of(const std::string& path);

} // namespace sheerpole
