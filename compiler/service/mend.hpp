#pragma once

#include "service/compile.hpp"

#include <functional>
#include <string>
#include <vector>

namespace sheerpole {

/// One certain edit that was made.
struct MadeEdit {
  std::string file;
  Position place;    ///< where it begins in the mended text
  std::string title; ///< what it did: "write >"
};

/// A file whose text was changed.
struct MendedFile {
  std::string name;  ///< the path under which it was opened
  std::string bytes; ///< the whole mended file, with its byte order mark when it had one
};

/// What came of mending a rig file and the files it uses.
struct Mending {
  std::vector<MadeEdit> made;    ///< in the order of the files, then of the places
  std::vector<MendedFile> files; ///< those that changed, in the order in which they were read
  Compilation after;             ///< what the mended texts give
};

/// Whether a file may be changed; the others are read and left as they are.
using MayChange = std::function<bool(const std::string& name)>;

/// Makes all certain edits of the file and of those it uses, compiles again and goes on until none is left.
/// Of edits that overlap the first is made and the other looked at again. A round whose result is worse is
/// taken back: one that comes less far through the phases, or as far with more errors. That names are bound
/// for the first time, and found wanting, because the text can be read now, is no worse result.
/// Line ends that an edit puts in are those of the file.
Mending mend(const std::string& path, FileReader& reader, const MayChange& may_change);

} // namespace sheerpole
