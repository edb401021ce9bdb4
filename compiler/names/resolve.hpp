#pragma once

#include "diagnostics/sink.hpp"
#include "names/resolved_tree.hpp"

#include <memory>
#include <string>
#include <vector>

namespace sheerpole {

/// Binds every name of the files to what it stands for, and every kind and property to its row of the table
/// of kinds. Unknown names are reported once, with the nearest known name.
ResolvedTree resolve(std::vector<std::shared_ptr<const SyntaxTree>> trees, DiagnosticSink& sink);

/// The symbols and the uses of names as text, for `--print names`.
std::string print_names(const ResolvedTree& tree);

} // namespace sheerpole
