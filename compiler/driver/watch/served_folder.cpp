#include "driver/watch/served_folder.hpp"

#include "base/byte_text.hpp"
#include "driver/writing/folder_handle.hpp"
#include "driver/writing/replace_file.hpp"
#include "source/file_reader.hpp"

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <optional>
#include <sys/stat.h>
#include <system_error>

namespace sheerpole {

namespace {

namespace fs = std::filesystem;

/// A folder of rigs is some dozens of files; who names the top of a disk is told.
constexpr std::size_t most_entries = 20000;
constexpr int deepest = 12;
constexpr std::string_view ending = ".rig";
constexpr const char* half_written = ".sheerpole-new-file";

/// Why a file cannot be shown as text; nothing when it can.
std::optional<std::string> why_not(const Result<std::string, FileReader::Failure>& read) {
  if (!read.ok())
    return read.error() == FileReader::Failure::too_large ? "it is longer than a rig file may be"
                                                          : "it cannot be read";
  if (first_invalid_utf8(read.value()) != std::string_view::npos)
    return "it is no UTF-8 text";
  if (read.value().find('\0') != std::string::npos)
    return "it is no text";
  return std::nullopt;
}

bool is_text(std::string_view bytes) {
  return bytes.size() <= largest_source_bytes && first_invalid_utf8(bytes) == std::string_view::npos &&
         bytes.find('\0') == std::string_view::npos;
}

} // namespace

bool is_served_name(std::string_view name) {
  if (!name.ends_with(ending) || name.find('\\') != std::string_view::npos)
    return false;
  if (std::any_of(name.begin(), name.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20; }))
    return false;
  for (std::size_t at = 0; at <= name.size();) {
    const std::size_t end = std::min(name.find('/', at), name.size());
    const std::string_view part = name.substr(at, end - at);
    if (part.empty() || part.front() == '.')
      return false;
    at = end + 1;
  }
  return name.size() > ending.size() && !name.ends_with("/.rig");
}

ServedFolder::ServedFolder(const std::string& folder) {
  std::error_code error;
  const fs::path real = fs::canonical(folder, error);
  folder_ = error ? folder : real.string();
}

bool ServedFolder::is_inside(const std::string& path) const {
  std::error_code error;
  const fs::path real = fs::canonical(path, error);
  const std::string below = folder_.ends_with('/') ? folder_ : folder_ + "/";
  return !error && real.string().starts_with(below);
}

std::vector<ServedFolder::Found> ServedFolder::rig_files(std::vector<LeftOut>& left_out,
                                                         std::size_t& seen) const {
  std::vector<Found> found;
  std::error_code error;
  // Links to folders are not followed: they lead out, or to what is here already.
  fs::recursive_directory_iterator at(folder_, fs::directory_options::skip_permission_denied, error);
  for (const fs::recursive_directory_iterator end; !error && at != end; at.increment(error)) {
    if (++seen > most_entries)
      break;
    const std::string last = at->path().filename().string();
    std::error_code ignored;
    if (last.starts_with('.') || at.depth() >= deepest) {
      if (at->is_directory(ignored))
        at.disable_recursion_pending();
      continue;
    }
    const std::string name = at->path().lexically_relative(folder_).generic_string();
    if (!is_served_name(name) || !at->is_regular_file(ignored))
      continue;
    if (at->is_symlink(ignored) && !is_inside(at->path().string()))
      left_out.push_back({name, "it is a link that leads out of the folder"});
    else
      found.push_back({name, at->path().string()});
  }
  std::sort(found.begin(), found.end(), [](const Found& a, const Found& b) { return a.name < b.name; });
  std::sort(left_out.begin(), left_out.end(),
            [](const LeftOut& a, const LeftOut& b) { return a.name < b.name; });
  return found;
}

ServedFolder::Content ServedFolder::read() const {
  Content content;
  std::size_t seen = 0;
  DiskFileReader disk;
  for (const Found& file : rig_files(content.left_out, seen)) {
    auto text = disk.read(file.path, largest_source_bytes);
    if (const auto why = why_not(text)) {
      content.left_out.push_back({file.name, *why});
      continue;
    }
    std::string sum = sha256(text.value());
    content.files[file.name] = {std::move(text.value()), std::move(sum)};
  }
  return content;
}

std::string ServedFolder::state() const {
  std::vector<LeftOut> left_out;
  std::size_t seen = 0;
  std::string all;
  for (const Found& file : rig_files(left_out, seen)) {
    struct stat found {};
    if (stat(file.path.c_str(), &found) != 0)
      continue;
    all += file.name + '\n' + std::to_string(found.st_ino) + ' ' + std::to_string(found.st_size) + ' ' +
           std::to_string(found.st_mtim.tv_sec) + '.' + std::to_string(found.st_mtim.tv_nsec) + '\n';
  }
  return sha256(all);
}

bool ServedFolder::is_too_large() const {
  std::vector<LeftOut> left_out;
  std::size_t seen = 0;
  rig_files(left_out, seen);
  return seen > most_entries;
}

Saved ServedFolder::make(const std::string& name, std::string_view bytes) const {
  const fs::path path = fs::path(folder_) / name;
  const std::string parent = path.parent_path().string();
  if (parent != folder_ && !is_inside(parent))
    return Saved::no_such_file;
  const FolderHandle folder(parent);
  if (!folder.is_open())
    return Saved::no_such_file;
  const std::string last = path.filename().string();
  if (folder.look(last).ok())
    return Saved::changed_meanwhile;
  // Whole under another name first; a second name never takes the place of a file that is there.
  folder.remove(half_written);
  std::error_code error;
  if (folder.make_file(half_written, bytes) != 0) {
    folder.remove(half_written);
    return Saved::not_written;
  }
  fs::create_hard_link(path.parent_path() / half_written, path, error);
  folder.remove(half_written);
  if (!error)
    return Saved::written;
  if (error == std::errc::file_exists)
    return Saved::changed_meanwhile;
  // A memory stick has no second names.
  const int reason = folder.make_file(last, bytes);
  if (reason == 0)
    return Saved::written;
  if (reason == EEXIST)
    return Saved::changed_meanwhile;
  folder.remove(last); // half of it
  return Saved::not_written;
}

Saved ServedFolder::save(const std::string& name, std::string_view bytes, std::string_view was) const {
  if (!is_served_name(name))
    return Saved::no_such_file;
  if (!is_text(bytes))
    return Saved::not_text;
  const std::string path = (fs::path(folder_) / name).string();
  std::error_code error;
  if (!fs::exists(fs::symlink_status(path, error)))
    return was.empty() ? make(name, bytes) : Saved::changed_meanwhile;
  if (!is_inside(path) || !fs::is_regular_file(path, error))
    return Saved::no_such_file;
  DiskFileReader disk;
  const auto now = disk.read(path, largest_source_bytes);
  if (!now.ok() || was.empty() || sha256(now.value()) != was)
    return Saved::changed_meanwhile;
  return replace_file(path, bytes) ? Saved::written : Saved::not_written;
}

} // namespace sheerpole
