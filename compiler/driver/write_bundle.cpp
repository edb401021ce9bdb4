#include "driver/write_bundle.hpp"

#include "driver/terminal.hpp"

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <fstream>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace sheerpole {

namespace {

bool stays_inside(const std::string& name) {
  if (name.empty() || name.find('\\') != std::string::npos || name.find('\0') != std::string::npos)
    return false;
  const std::filesystem::path path(name);
  if (path.is_absolute() || !path.has_filename())
    return false;
  return std::none_of(path.begin(), path.end(),
                      [](const auto& part) { return part == ".." || part == "."; });
}

void remove_all_of(const std::vector<std::filesystem::path>& paths) {
  std::error_code ignored;
  for (const auto& path : paths)
    std::filesystem::remove(path, ignored);
}

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

Result<std::vector<std::string>, WriteFailure> write_bundle(const OutputBundle& bundle,
                                                            const std::string& folder) {
  std::vector<std::string> names;
  for (const OutputFile& file : bundle.files) {
    if (!stays_inside(file.name))
      return WriteFailure{WriteFailure::Kind::bad_name, file.name};
    if (std::find(names.begin(), names.end(), file.name) != names.end())
      return WriteFailure{WriteFailure::Kind::same_name, file.name};
    names.push_back(file.name);
  }
  std::error_code error;
  const std::filesystem::path root(folder);
  std::filesystem::create_directories(root, error);
  if (!std::filesystem::is_directory(root))
    return WriteFailure{WriteFailure::Kind::folder, folder};
  std::vector<std::filesystem::path> temporary;
  for (const OutputFile& file : bundle.files) {
    const std::filesystem::path target = root / file.name;
    std::filesystem::create_directories(target.parent_path(), error);
    std::filesystem::path waiting = target;
    waiting += ".being-written";
    temporary.push_back(waiting);
    std::ofstream stream(waiting, std::ios::binary | std::ios::trunc);
    stream.write(file.bytes.data(), static_cast<std::streamsize>(file.bytes.size()));
    stream.close();
    if (!stream || std::filesystem::is_directory(target)) {
      remove_all_of(temporary);
      return WriteFailure{WriteFailure::Kind::file, target.generic_string()};
    }
  }
  std::vector<std::string> written;
  for (std::size_t i = 0; i < bundle.files.size(); ++i) {
    const std::filesystem::path target = root / bundle.files[i].name;
    std::filesystem::rename(temporary[i], target, error);
    if (error) {
      remove_all_of(temporary);
      return WriteFailure{WriteFailure::Kind::file, target.generic_string()};
    }
    written.push_back(target.generic_string());
  }
  return written;
}

std::string describe(const WriteFailure& failure) {
  switch (failure.kind) {
  case WriteFailure::Kind::bad_name:
    return "a back end wanted to write outside the folder: " + failure.what;
  case WriteFailure::Kind::same_name:
    return "two back ends wanted to write " + failure.what;
  case WriteFailure::Kind::folder:
    return "can not make or write to the folder " + failure.what;
  case WriteFailure::Kind::file:
    return "can not write " + failure.what;
  }
  return failure.what;
}

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

int write_and_tell(const OutputBundle& bundle, const std::string& folder, std::vector<std::string>* paths) {
  const auto written = write_bundle(bundle, folder);
  if (!written.ok()) {
    print_error("sheerpole: " + describe(written.error()) + "; nothing was written\n");
    return is_fault(written.error()) ? exit_fault : exit_usage;
  }
  for (const std::string& path : written.value())
    print_out("wrote " + path + "\n");
  if (paths != nullptr)
    *paths = written.value();
  return exit_clean;
}

} // namespace sheerpole
