#pragma once

#include "diagnostics/sink.hpp"
#include "names/kept_trees.hpp"
#include "source/file_reader.hpp"
#include "source/source_set.hpp"
#include "syntax/syntax_tree.hpp"

#include <memory>
#include <string>
#include <vector>

namespace sheerpole {

/// Most files that one rig may consist of, and the longest chain of `use`.
inline constexpr std::size_t most_files = 256;
inline constexpr int deepest_use = 16;

/// Most bytes that all files of a rig may have together, and most things that they may state: declarations,
/// properties, points, items.
inline constexpr std::size_t most_rig_bytes = 16 * 1024 * 1024;
inline constexpr std::size_t most_declarations = 100'000;

/// Reads and parses a rig file and all files that it uses, each once. The order is that of a walk in which
/// a used file comes before the file that uses it; the root file is the last. Paths in `use` are relative
/// to the file they stand in and may not leave the root file's folder, nor by a link, unless they lead into
/// one of `more_folders`. Trees of `kept` (may be null) are taken
/// again. Empty only when the root file itself can not be read.
std::vector<std::shared_ptr<const SyntaxTree>> read_files(const std::string& root_path, FileReader& reader,
                                                          const std::vector<std::string>& more_folders,
                                                          SourceSet& sources, DiagnosticSink& sink,
                                                          KeptTrees* kept = nullptr);

inline std::vector<std::shared_ptr<const SyntaxTree>>
read_files(const std::string& root_path, FileReader& reader, SourceSet& sources, DiagnosticSink& sink) {
  return read_files(root_path, reader, {}, sources, sink);
}

} // namespace sheerpole
