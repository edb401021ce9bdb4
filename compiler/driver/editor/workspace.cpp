#include "driver/editor/workspace.hpp"

#include <algorithm>
#include <filesystem>
#include <optional>
#include <system_error>
#include <utility>

namespace sheerpole::editor {

namespace {

namespace fs = std::filesystem;

/// In the folders of an editor not more is looked at than this: they may be anybody's home.
constexpr std::size_t most_files_looked_at = 2'000;
constexpr int deepest_folder = 8;
constexpr std::size_t most_users = 50;
/// Boats that were looked at and belong to nothing that is open are kept up to here.
constexpr std::size_t most_held = 100;

/// The rig files below a folder, in the order of their names; folders that begin with a point are passed
/// over, and so is what cannot be read.
std::vector<std::string> rig_files_below(const std::string& folder) {
  std::vector<std::string> result;
  std::error_code failed;
  fs::recursive_directory_iterator at(folder, fs::directory_options::skip_permission_denied, failed);
  std::size_t looked_at = 0;
  for (; !failed && at != fs::recursive_directory_iterator(); at.increment(failed)) {
    if (++looked_at > most_files_looked_at * 10 || result.size() >= most_files_looked_at)
      break;
    const fs::path& path = at->path();
    const std::string name = path.filename().string();
    std::error_code unknown;
    if (at->is_directory(unknown)) {
      if (at.depth() >= deepest_folder || name.starts_with('.') || name == "node_modules")
        at.disable_recursion_pending();
    } else if (path.extension() == ".rig") {
      result.push_back(path.lexically_normal().generic_string());
    }
  }
  std::sort(result.begin(), result.end());
  return result;
}

} // namespace

void Workspace::set_folders(std::vector<std::string> folders) {
  folders_ = std::move(folders);
  forget_disk();
}

void Workspace::set_allowed_folders(std::vector<std::string> folders) {
  allowed_folders_ = std::move(folders);
  forget_disk();
}

void Workspace::open(const std::string& path, std::string text) {
  open_.insert(path);
  texts_.put(path, std::move(text));
  forget_disk();
}

void Workspace::change(const std::string& path, std::string text) {
  texts_.put(path, std::move(text));
  // A boat whose reading failed may have asked for this file.
  for (auto& [root, held] : held_)
    held.stale = held.stale || held.boat.compiled.has_errors || holds(held.boat, path);
  roots_known_ = false;
}

void Workspace::close(const std::string& path) {
  open_.erase(path);
  texts_.drop(path);
  forget_disk();
}

void Workspace::forget_disk() {
  for (auto& [root, held] : held_)
    held.stale = true;
  users_.clear();
  roots_known_ = false;
}

CompileOptions Workspace::options() {
  CompileOptions options;
  options.folders = allowed_folders_;
  options.threads = 1;
  options.wanted = Wanted::counts;
  options.kept = &kept_;
  return options;
}

bool Workspace::holds(const service::OpenBoat& boat, const std::string& path) {
  return boat.compiled.sources != nullptr && boat.source(path).has_value();
}

const service::OpenBoat& Workspace::read(const std::string& root) {
  Held& held = held_[root];
  if (held.stale) {
    held.boat = service::read_boat(root, texts_, options());
    held.stale = false;
  }
  return held.boat;
}

std::vector<std::string> Workspace::users_of(const std::string& path) {
  const auto known = users_.find(path);
  if (known != users_.end())
    return known->second;
  const std::string name = fs::path(path).filename().string();
  std::vector<std::string> result;
  for (const std::string& folder : folders_)
    for (const std::string& file : rig_files_below(folder)) {
      if (file == path || result.size() >= most_users)
        continue;
      const auto bytes = texts_.read(file, largest_source_bytes);
      // A boat may use it by way of another library, which is then a user as well and found by its boat.
      if (bytes.ok() && bytes.value().find(name + "\"") != std::string::npos)
        result.push_back(file);
    }
  users_[path] = result;
  return result;
}

void Workspace::find_roots() {
  if (roots_known_)
    return;
  // What was a boat before is read first: mostly it still is, and covers the libraries that are open.
  std::vector<std::string> waiting(roots_.begin(), roots_.end());
  std::erase_if(waiting, [&](const std::string& path) { return !open_.contains(path); });
  for (const std::string& path : open_)
    if (!roots_.contains(path))
      waiting.push_back(path);
  std::set<std::string> roots;
  const auto is_covered = [&](const std::string& path) {
    return std::any_of(roots.begin(), roots.end(), [&](const std::string& root) {
      return root != path && holds(held_.at(root).boat, path);
    });
  };
  for (const std::string& path : waiting) {
    if (is_covered(path))
      continue;
    read(path);
    roots.insert(path);
  }
  // A library that was read before the boat that uses it.
  for (const std::string& path : std::set<std::string>(roots))
    if (is_covered(path))
      roots.erase(path);
  for (const std::string& path : std::set<std::string>(roots)) {
    bool used = false;
    for (const std::string& user : users_of(path)) {
      const service::OpenBoat& boat = read(user);
      if (user == path || !holds(boat, path))
        continue;
      roots.insert(user);
      used = true;
    }
    if (used)
      roots.erase(path);
  }
  roots_ = std::move(roots);
  if (held_.size() > most_held)
    std::erase_if(held_, [&](const auto& each) { return !roots_.contains(each.first); });
  roots_known_ = true;
}

std::vector<const service::OpenBoat*> Workspace::boats() {
  find_roots();
  std::vector<const service::OpenBoat*> result;
  for (const std::string& root : std::set<std::string>(roots_))
    result.push_back(&read(root));
  return result;
}

const service::OpenBoat* Workspace::boat_of(const std::string& path) {
  const std::vector<const service::OpenBoat*> all = boats();
  for (const service::OpenBoat* boat : all)
    if (boat->root == path)
      return boat;
  for (const service::OpenBoat* boat : all)
    if (holds(*boat, path))
      return boat;
  return nullptr;
}

std::vector<const service::OpenBoat*> Workspace::all_boats_of(const std::string& path) {
  std::vector<const service::OpenBoat*> result;
  for (const service::OpenBoat* boat : boats())
    if (holds(*boat, path))
      result.push_back(boat);
  for (const std::string& user : users_of(path)) {
    const bool there = std::any_of(result.begin(), result.end(),
                                   [&](const service::OpenBoat* boat) { return boat->root == user; });
    if (const service::OpenBoat& boat = read(user); !there && holds(boat, path))
      result.push_back(&boat);
  }
  return result;
}

} // namespace sheerpole::editor
