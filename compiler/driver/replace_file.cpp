#include "driver/replace_file.hpp"

#include <cerrno>
#include <filesystem>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace sheerpole {

namespace {

bool write_all(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = write(file, bytes.data(), bytes.size());
    if (written < 0 && errno != EINTR)
      return false;
    if (written > 0)
      bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return true;
}

} // namespace

bool replace_file(const std::string& path, std::string_view bytes) {
  std::error_code error;
  const std::filesystem::path target = std::filesystem::canonical(path, error);
  struct stat old {};
  // A file that may not be written to is not replaced either, though its folder would allow it.
  if (error || stat(target.c_str(), &old) != 0 || access(target.c_str(), W_OK) != 0)
    return false;
  std::string waiting = target.string() + ".XXXXXX";
  const int file = mkstemp(waiting.data());
  if (file < 0)
    return false;
  // On the disk before it takes the name: after a power cut there is a whole file under it.
  bool done = write_all(file, bytes) && fchmod(file, old.st_mode & 07777) == 0 && fsync(file) == 0;
  done = close(file) == 0 && done;
  if (done)
    std::filesystem::rename(waiting, target, error);
  if (!done || error) {
    std::filesystem::remove(waiting, error);
    return false;
  }
  return true;
}

} // namespace sheerpole
