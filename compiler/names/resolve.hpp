#pragma once

#include "diagnostics/sink.hpp"
#include "names/resolved_tree.hpp"
#include "source/source_set.hpp"

#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

/// Binds every name of the files to what it stands for, and every kind and property to its row of the table
/// of kinds. Unknown names are reported once, with the nearest known name. What layers, a sister ship and
/// the command line (`what_if`, may be null) state over other declarations takes their place. With `as_of`,
/// the name of a layer, later layers are left out.
ResolvedTree resolve(std::vector<std::shared_ptr<const SyntaxTree>> trees,
                     std::shared_ptr<const SyntaxTree> what_if, DiagnosticSink& sink,
                     const std::string& as_of = {});

inline ResolvedTree resolve(std::vector<std::shared_ptr<const SyntaxTree>> trees, DiagnosticSink& sink) {
  return resolve(std::move(trees), nullptr, sink);
}

/// Every name with what it stands for, where it is declared and where it is used, and the names that stand
/// for nothing, as text for `--print names`. In the order in which they are declared.
std::string print_names(const ResolvedTree& tree, const SourceSet& sources);

} // namespace sheerpole
