#pragma once

#include "base/result.hpp"
#include "source/file_reader.hpp"

#include <memory>
#include <string>

namespace sheerpole {

/// What FILE on the command line stands for.
struct RigArgument {
  std::string path; ///< under which `reader` has the rig file
  std::unique_ptr<FileReader> reader;
  bool on_disk = true; ///< else nothing can be written back to it
};

/// `-` is standard input, whose libraries lie below the folder where we are. `REVISION:FILE` is the file as
/// it was in that revision of a git repository, its libraries too; without a revision, `:FILE`, as it is
/// staged. FILE is a path from the folder where we are. A file on the disk with such a name comes first;
/// every other word is a file on the disk, there or not. The error is what to say when git has no such
/// revision.
Result<RigArgument, std::string> rig_argument(const std::string& word);

/// The same of a verb that writes its file back: `-` or a file on the disk, whatever its name.
RigArgument file_or_standard_input(const std::string& word);

} // namespace sheerpole
