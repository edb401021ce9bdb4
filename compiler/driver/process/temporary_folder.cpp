#include "driver/process/temporary_folder.hpp"

#include <cstdlib>
#include <filesystem>
#include <system_error>

namespace sheerpole {

namespace {

namespace fs = std::filesystem;

/// Gives back the rights that a program took from its own folders, without which they can not be emptied.
void open_folders(const fs::path& folder) {
  std::error_code ignored;
  fs::permissions(folder, fs::perms::owner_all, fs::perm_options::add, ignored);
  for (fs::directory_iterator each(folder, ignored), end; !ignored && each != end; each.increment(ignored))
    if (each->is_directory(ignored) && !each->is_symlink(ignored))
      open_folders(each->path());
}

} // namespace

TemporaryFolder::TemporaryFolder() {
  std::error_code error;
  const fs::path among = fs::temp_directory_path(error);
  if (error)
    return;
  std::string name = (among / "sheerpole-XXXXXX").string();
  if (mkdtemp(name.data()) != nullptr)
    path_ = name;
}

TemporaryFolder::~TemporaryFolder() {
  if (path_.empty())
    return;
  std::error_code error;
  fs::remove_all(path_, error);
  if (!error)
    return;
  open_folders(path_);
  fs::remove_all(path_, error);
}

} // namespace sheerpole
