#pragma once

#include "backend/backend.hpp"
#include "base/result.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Why nothing was written.
struct WriteFailure {
  enum class Kind {
    bad_name,  ///< a back end's file name would leave the folder; a fault of the back end
    same_name, ///< two files of one name; a fault of the back ends
    folder,    ///< the folder can not be made or written to
    file       ///< the disk is full, or a file of that name can not be replaced
  };
  Kind kind = Kind::file;
  std::string what; ///< the name or the path it is about
};

/// Whether back ends are to blame, and not the disk or the folder.
constexpr bool is_fault(const WriteFailure& failure) {
  return failure.kind == WriteFailure::Kind::bad_name || failure.kind == WriteFailure::Kind::same_name;
}

/// "can not write out/cut-list.txt"
std::string describe(const WriteFailure& failure);

/// Writes all files or none: each goes to a temporary name first, and only when all are there do they take
/// their real names. Returns the paths, in the order of the files.
Result<std::vector<std::string>, WriteFailure> write_bundle(const OutputBundle& bundle,
                                                            const std::string& folder);

/// Puts a new text in the place of a file that is there. The text is written to a file beside it first,
/// which then takes the name and the permissions of the old one: whoever reads finds the one or the other
/// and never half of it. A link is followed. False when the folder or the disk does not allow it; the file
/// is then as it was.
bool replace_file(const std::string& path, std::string_view bytes);

/// Writes the files into the folder and tells each, or why none was written. Exit code: clean; usage when
/// the folder can not be written to; fault when a back end named its files badly. `paths` receives the
/// paths of the files.
int write_and_tell(const OutputBundle& bundle, const std::string& folder,
                   std::vector<std::string>* paths = nullptr);

} // namespace sheerpole
