#pragma once

#include "service/open_boat.hpp"
#include "service/texts.hpp"

#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

namespace sheerpole::editor {

/// The texts that an editor has open, in front of the disk, and the boats that they belong to.
///
/// A file that is open is a boat of its own, unless a boat that is open uses it. A library that is open
/// alone belongs to the boats in the folders of the editor that use it; when there is none it stands alone,
/// as it does for `check`.
class Workspace {
public:
  Workspace() : texts_(&disk_) {}

  void set_folders(std::vector<std::string> folders);
  const std::vector<std::string>& folders() const { return folders_; }
  /// Folders from which `use` may read as well.
  void set_allowed_folders(std::vector<std::string> folders);

  void open(const std::string& path, std::string text);
  void change(const std::string& path, std::string text);
  void close(const std::string& path);
  /// Something on the disk may be other than it was.
  void forget_disk();

  bool is_open(const std::string& path) const { return open_.contains(path); }
  /// The text as the editor has it; null when it is not open.
  const std::string* text(const std::string& path) const { return texts_.find(path); }
  FileReader& reader() { return texts_; }

  /// All boats that anything which is open belongs to, in the order of their paths.
  std::vector<const service::OpenBoat*> boats();
  /// The first boat that the file belongs to, read anew where a text of hers has changed; null when it
  /// belongs to none, since it is not open.
  const service::OpenBoat* boat_of(const std::string& path);
  /// All boats in the folders of the editor, and those that are open, that the file belongs to.
  std::vector<const service::OpenBoat*> all_boats_of(const std::string& path);
  CompileOptions options();

private:
  struct Held {
    service::OpenBoat boat;
    bool stale = true;
    bool background = false; ///< not open itself; a library of hers is
  };

  const service::OpenBoat& read(const std::string& root);
  void find_roots();
  /// Rig files on the disk, below the folders, that name this file in a `use`.
  std::vector<std::string> users_of(const std::string& path);
  static bool holds(const service::OpenBoat& boat, const std::string& path);

  DiskFileReader disk_;
  service::Texts texts_;
  KeptTrees kept_;
  std::set<std::string> open_;
  std::vector<std::string> folders_;
  std::vector<std::string> allowed_folders_;
  std::map<std::string, Held> held_; ///< by the path of the file that was asked for
  std::set<std::string> roots_;      ///< the boats of what is open
  bool roots_known_ = false;
  std::map<std::string, std::vector<std::string>> users_; ///< what users_of found
};

} // namespace sheerpole::editor
