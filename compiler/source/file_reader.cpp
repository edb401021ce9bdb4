#include "source/file_reader.hpp"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <filesystem>
#include <poll.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace sheerpole {

std::size_t first_invalid_utf8(std::string_view bytes) {
  std::size_t i = 0;
  const auto at = [&](std::size_t k) { return static_cast<unsigned char>(bytes[k]); };
  while (i < bytes.size()) {
    const unsigned char lead = at(i);
    std::size_t length = 0;
    std::uint32_t code = 0;
    std::uint32_t least = 0;
    if (lead < 0x80) {
      ++i;
      continue;
    }
    if ((lead & 0xE0) == 0xC0) {
      length = 2, code = lead & 0x1F, least = 0x80;
    } else if ((lead & 0xF0) == 0xE0) {
      length = 3, code = lead & 0x0F, least = 0x800;
    } else if ((lead & 0xF8) == 0xF0) {
      length = 4, code = lead & 0x07, least = 0x10000;
    } else {
      return i;
    }
    if (i + length > bytes.size())
      return i;
    for (std::size_t k = 1; k < length; ++k) {
      if ((at(i + k) & 0xC0) != 0x80)
        return i;
      code = (code << 6) | (at(i + k) & 0x3F);
    }
    if (code < least || code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF))
      return i;
    i += length;
  }
  return std::string_view::npos;
}

Result<SourceText, LoadFailure> load(const std::string& path, SourceId id, FileReader& reader) {
  auto read = reader.read(path, largest_source_bytes);
  if (!read.ok()) {
    switch (read.error()) {
    case FileReader::Failure::not_found:
      return LoadFailure{LoadFailure::Kind::not_found};
    case FileReader::Failure::not_readable:
      return LoadFailure{LoadFailure::Kind::not_readable};
    case FileReader::Failure::is_folder:
      return LoadFailure{LoadFailure::Kind::is_folder};
    case FileReader::Failure::too_large:
      return LoadFailure{LoadFailure::Kind::too_large};
    }
  }
  std::string bytes = std::move(read.value());
  const bool marked = bytes.compare(0, 3, "\xEF\xBB\xBF") == 0;
  if (marked)
    bytes.erase(0, 3);
  const std::size_t bad = first_invalid_utf8(bytes);
  if (bad != std::string_view::npos) {
    const auto line = std::count(bytes.begin(), bytes.begin() + static_cast<std::ptrdiff_t>(bad), '\n') + 1;
    return LoadFailure{LoadFailure::Kind::not_utf8, static_cast<std::uint32_t>(line)};
  }
  return SourceText(id, path, std::move(bytes), marked);
}

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
