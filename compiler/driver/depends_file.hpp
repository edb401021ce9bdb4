#pragma once

#include "service/compile.hpp"
#include "source/source_set.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// Which files were made from which, for programs that make again what is out of date.
struct Dependencies {
  std::vector<std::string> outputs; ///< paths, in the order in which they were written
  std::vector<std::string> inputs;  ///< paths, the first time that each was read
};

/// Puts the paths of the files that were read behind those that are there, each once.
void add_files(std::vector<std::string>& paths, const SourceSet& sources);

/// The same with the pictures that they name.
void add_files(std::vector<std::string>& paths, const Compilation& compilation);

/// A rule of make: `outputs: inputs`, one name a line, and each input but the first once more as a rule
/// without inputs, so that make goes on when a library is gone. Blanks and # are escaped by a backslash, $
/// is doubled, as compilers write it and as make and ninja read it; a colon has a backslash. Nothing when a
/// name has a line end or a tab in it, which the form can not say.
std::optional<std::string> write_dependencies(const Dependencies& dependencies);

/// Writes which files were made from which. Exit code: usage when the file can not be written or a name has
/// a sign in it that the form can not say, which has been told.
int write_depends(const Dependencies& dependencies, const std::string& file);

} // namespace sheerpole
