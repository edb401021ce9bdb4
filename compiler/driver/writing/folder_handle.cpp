#include "driver/writing/folder_handle.hpp"

#include <cerrno>
#include <chrono>
#include <fcntl.h>
#include <sys/file.h>
#include <thread>
#include <unistd.h>

namespace sheerpole {

namespace {

constexpr std::chrono::milliseconds ask_again{20};
constexpr std::chrono::seconds longest_wait{60};

int reason_of(int result) {
  return result == 0 ? 0 : errno;
}

} // namespace

FolderHandle::FolderHandle(const std::string& path)
    : number_(open(path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)) {}

FolderHandle::~FolderHandle() {
  if (is_open())
    close(number_);
}

Result<FolderHandle, int> FolderHandle::inside(const std::string& name) const {
  if (mkdirat(number_, name.c_str(), 0777) != 0 && errno != EEXIST)
    return errno;
  const int number = openat(number_, name.c_str(), O_RDONLY | O_DIRECTORY | O_NOFOLLOW | O_CLOEXEC);
  if (number < 0)
    return errno;
  return FolderHandle(number);
}

bool FolderHandle::lock() const {
  const auto begun = std::chrono::steady_clock::now();
  while (flock(number_, LOCK_EX | LOCK_NB) != 0) {
    if (errno != EWOULDBLOCK && errno != EINTR)
      return true;
    if (std::chrono::steady_clock::now() - begun > longest_wait)
      return false;
    std::this_thread::sleep_for(ask_again);
  }
  return true;
}

int FolderHandle::make_file(const std::string& name, std::string_view bytes) const {
  const int file =
      openat(number_, name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
  if (file < 0)
    return errno;
  int reason = write_whole(file, bytes);
  // A disk may say only now that it is full.
  if (close(file) != 0 && reason == 0)
    reason = errno;
  return reason;
}

int FolderHandle::rename(const std::string& from, const std::string& to) const {
  return reason_of(renameat(number_, from.c_str(), number_, to.c_str()));
}

int FolderHandle::keep_as(const std::string& name, const std::string& second, bool& moved) const {
  moved = linkat(number_, name.c_str(), number_, second.c_str(), 0) != 0;
  return moved ? rename(name, second) : 0;
}

int FolderHandle::remove(const std::string& name) const {
  return reason_of(unlinkat(number_, name.c_str(), 0));
}

Result<struct stat, int> FolderHandle::look(const std::string& name) const {
  struct stat found {};
  if (fstatat(number_, name.c_str(), &found, AT_SYMLINK_NOFOLLOW) != 0)
    return errno;
  return found;
}

int write_whole(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = write(file, bytes.data(), bytes.size());
    if (written < 0 && errno != EINTR)
      return errno;
    if (written > 0)
      bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

FoundIdentity identity_of(const std::string& path) {
  struct stat found {};
  if (path.empty() || stat(path.c_str(), &found) != 0)
    return {};
  return {.found = true, .identity = {found.st_dev, found.st_ino}};
}

} // namespace sheerpole
