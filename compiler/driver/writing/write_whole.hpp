#pragma once

#include <cerrno>
#include <string_view>
#include <unistd.h>

namespace sheerpole {

/// Writes all of it to an open file, however many calls that takes. 0, or the number of the reason why not
/// (`errno`).
inline int write_whole(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = write(file, bytes.data(), bytes.size());
    if (written < 0 && errno != EINTR)
      return errno;
    if (written > 0)
      bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

} // namespace sheerpole
