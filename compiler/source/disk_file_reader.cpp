#include "source/file_reader.hpp"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <filesystem>
#include <poll.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace sheerpole {

namespace {

/// How long a pipe may be silent, in milliseconds: whoever opened it for us writes at once.
constexpr int longest_silence = 10'000;

/// Closes what it holds.
struct OpenFile {
  explicit OpenFile(int opened) : number(opened) {}
  ~OpenFile() {
    if (number >= 0)
      close(number);
  }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;
  int number;
};

FileReader::Failure failure_to_open() {
  return errno == ENOENT || errno == ENOTDIR || errno == ENAMETOOLONG ? FileReader::Failure::not_found
                                                                      : FileReader::Failure::not_readable;
}

} // namespace

Result<std::string, FileReader::Failure> DiskFileReader::read(const std::string& path, std::size_t limit) {
  // A pipe that nobody writes to must not hold us up, so neither opening nor reading waits.
  const OpenFile file(open(path.c_str(), O_RDONLY | O_NONBLOCK | O_NOCTTY | O_CLOEXEC));
  struct stat found {};
  if (file.number < 0 || fstat(file.number, &found) != 0)
    return failure_to_open();
  if (S_ISDIR(found.st_mode))
    return Failure::is_folder;
  // Read in pieces and stop past the limit: a pipe or a growing file has no size to ask for beforehand.
  std::string bytes;
  if (S_ISREG(found.st_mode))
    bytes.reserve(std::min(limit, static_cast<std::size_t>(found.st_size)));
  char piece[65536];
  while (true) {
    const ssize_t got = ::read(file.number, piece, sizeof piece);
    if (got == 0)
      return bytes;
    if (got > 0)
      bytes.append(piece, static_cast<std::size_t>(got));
    if (bytes.size() > limit)
      return Failure::too_large;
    if (got > 0 || errno == EINTR)
      continue;
    pollfd watched{file.number, POLLIN, 0};
    if (errno != EAGAIN || poll(&watched, 1, longest_silence) <= 0)
      return Failure::not_readable;
  }
}

std::string FileReader::real_path(const std::string& path) {
  return std::filesystem::path(path).lexically_normal().generic_string();
}

std::string DiskFileReader::real_path(const std::string& path) {
  std::error_code failed;
  // Made absolute first: a path of which nothing exists would stay relative.
  const std::filesystem::path whole = std::filesystem::absolute(path, failed);
  const std::filesystem::path real = failed ? whole : std::filesystem::weakly_canonical(whole, failed);
  return failed ? FileReader::real_path(path) : real.generic_string();
}

} // namespace sheerpole
