#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What became of a text that was to be written.
enum class Saved : std::uint8_t {
  written,
  changed_meanwhile, ///< the file is not what it was to be replaced as, or there is one already
  no_such_file,      ///< no rig file of the folder has this name, and none may be made under it
  not_text,          ///< no UTF-8, or longer than a rig file may be
  not_written        ///< the disk or the folder does not allow it
};

/// The rig files of a folder and of the folders in it, for whoever may see these and nothing else.
///
/// A rig file's name ends in `.rig`. What begins with a dot is not looked at. A link that leads out of the
/// folder is no file of it.
class ServedFolder {
public:
  /// `folder` is there; its links are followed once, here.
  explicit ServedFolder(const std::string& folder);

  struct File {
    std::string text;
    std::string sum; ///< SHA-256 of the bytes
  };
  struct LeftOut {
    std::string name;
    std::string why;
  };
  struct Content {
    std::map<std::string, File> files; ///< by their paths from the folder, with `/`
    std::vector<LeftOut> left_out;     ///< rig files that cannot be shown
  };
  Content read() const;

  /// Another whenever a file has changed by its size, its time or its name: a look, without reading.
  std::string state() const;

  /// Whether the folder holds more than is looked through.
  bool is_too_large() const;

  /// Puts `bytes` in the place of the file, whole or not at all, as long as its sum is `was`. An empty
  /// `was` makes a file that is not there yet, in a folder that is.
  Saved save(const std::string& name, std::string_view bytes, std::string_view was) const;

private:
  struct Found {
    std::string name;
    std::string path;
  };
  /// The files by their names; `seen` counts all that was passed.
  std::vector<Found> rig_files(std::vector<LeftOut>& left_out, std::size_t& seen) const;
  Saved make(const std::string& name, std::string_view bytes) const;
  bool is_inside(const std::string& path) const;

  std::string folder_; ///< without links, `.` and `..`
};

/// Whether a file of the folder may be called so: no detour, nothing hidden, and it ends in `.rig`.
bool is_served_name(std::string_view name);

} // namespace sheerpole
