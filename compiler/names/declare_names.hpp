#pragma once

#include "diagnostics/sink.hpp"
#include "names/resolved_tree.hpp"
#include "names/symbol_table.hpp"

#include <unordered_map>

namespace sheerpole {

/// What a name in a declaration stands for.
struct DeclaredName {
  SymbolId symbol = poison_symbol;
  bool overlay = false; ///< declared elsewhere; this states something over it
};

/// By the place of the name in the tree; looked up only.
using DeclaredNames = std::unordered_map<const Name*, DeclaredName>;

/// Whether the root file describes a sister ship: its boat is made `from` another.
bool is_sister_ship(const SyntaxTree& root);

/// Enters every name that the files declare. In a sister ship's file and on the command line a name that is
/// declared in another file, as the same kind of thing, states something over it.
DeclaredNames declare_names(const ResolvedTree& tree, SymbolTable& table, DiagnosticSink& sink);

} // namespace sheerpole
