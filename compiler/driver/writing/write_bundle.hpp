#pragma once

#include "backend/backend.hpp"
#include "base/result.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Why nothing was written.
struct WriteFailure {
  enum class Kind {
    bad_name,   ///< a back end's file name would leave the folder; a fault of the back end
    same_name,  ///< two files of one name; a fault of the back ends
    folder,     ///< the folder can not be made or written to
    in_use,     ///< another build writes to the folder and does not come to an end
    link,       ///< a link stands where a folder of the papers belongs; it could lead anywhere
    not_a_file, ///< a folder, a pipe or a device has the name of a paper
    was_read,   ///< the paper would take the place of a file that it is made from
    file,       ///< the disk is full, or a file of that name can not be replaced
    mixed       ///< the same, and what had been replaced could not be put back
  };
  Kind kind = Kind::file;
  std::string what; ///< the name or the path it is about
  int reason = 0;   ///< as `errno` numbers it; 0: none that the system knows
};

/// Whether back ends are to blame, and not the disk or the folder.
constexpr bool is_fault(const WriteFailure& failure) {
  return failure.kind == WriteFailure::Kind::bad_name || failure.kind == WriteFailure::Kind::same_name;
}

/// "cannot write out/cut-list.txt: No space left on device", and of `mixed` what to do about it.
std::string describe(const WriteFailure& failure);

/// The file that lies in a folder while the papers there are of two builds, for whoever looks at one after
/// a build was killed half way.
inline constexpr const char* half_way_note = "WRITING-WAS-STOPPED.txt";

/// Writes all files or none. Nobody else writes to the folder meanwhile. Each goes to a temporary name
/// first; when all are there the old ones get a second name and the new ones take theirs; when one can not,
/// the old ones are put back. What a killed build left is cleared away by the next one. `read` are the
/// paths of the files that the papers are made from; none of them is written over, under whatever name.
/// Returns the paths, in the order of the files.
Result<std::vector<std::string>, WriteFailure>
write_bundle(const OutputBundle& bundle, const std::string& folder, const std::vector<std::string>& read);

/// Writes the files into the folder and tells each, or why none was written. Exit code: clean; usage when
/// the folder can not be written to; fault when a back end named its files badly. `paths` receives the
/// paths of the files.
int write_and_tell(const OutputBundle& bundle, const std::string& folder,
                   const std::vector<std::string>& read, std::vector<std::string>* paths = nullptr);

} // namespace sheerpole
