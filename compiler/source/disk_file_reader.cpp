#include "source/file_reader.hpp"

#include <filesystem>
#include <fstream>
#include <system_error>

namespace sheerpole {

Result<std::string, FileReader::Failure> DiskFileReader::read(const std::string& path, std::size_t limit) {
  std::error_code error;
  const std::filesystem::file_status status = std::filesystem::status(path, error);
  if (!std::filesystem::exists(status))
    return Failure::not_found;
  if (std::filesystem::is_directory(status))
    return Failure::is_folder;
  std::ifstream stream(path, std::ios::binary);
  if (!stream)
    return Failure::not_readable;
  // Read in pieces and stop past the limit: a pipe or a growing file has no size to ask for beforehand.
  std::string bytes;
  char piece[65536];
  while (stream.read(piece, sizeof piece) || stream.gcount() > 0) {
    bytes.append(piece, static_cast<std::size_t>(stream.gcount()));
    if (bytes.size() > limit)
      return Failure::too_large;
  }
  if (stream.bad())
    return Failure::not_readable;
  return bytes;
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
