#include "driver/writing/replace_file.hpp"

#include "driver/writing/folder_handle.hpp"

#include <cstdlib>
#include <filesystem>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace sheerpole {

namespace {

/// Gives the new file what the old one had. The owner first: a change of owner takes permissions away.
bool looks_like(int file, const struct stat& old) {
  struct stat now {};
  if (fstat(file, &now) != 0)
    return false;
  const bool other_owner = now.st_uid != old.st_uid || now.st_gid != old.st_gid;
  if (other_owner && fchown(file, old.st_uid, old.st_gid) != 0)
    return false;
  return fchmod(file, old.st_mode & 07777) == 0;
}

} // namespace

bool replace_file(const std::string& path, std::string_view bytes) {
  std::error_code error;
  const std::filesystem::path target = std::filesystem::canonical(path, error);
  struct stat old {};
  // A file that may not be written to is not replaced either, though its folder would allow it.
  if (error || stat(target.c_str(), &old) != 0 || !S_ISREG(old.st_mode) ||
      access(target.c_str(), W_OK) != 0)
    return false;
  std::string waiting = target.string() + ".XXXXXX";
  const int file = mkstemp(waiting.data());
  if (file < 0)
    return false;
  // On the disk before it takes the name: after a power cut there is a whole file under it.
  bool done = write_whole(file, bytes) == 0 && looks_like(file, old) && fsync(file) == 0;
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
