#pragma once

#include "diagnostics/sink.hpp"
#include "names/resolved_tree.hpp"
#include "names/symbol_table.hpp"

#include <cstddef>

namespace sheerpole {

/// Most properties, blocks and items that are copied in one rig: copies of copies could fill any computer.
inline constexpr std::size_t most_copies = 200'000;

/// `from base`: gives each declaration the properties and blocks of its base that it does not state itself.
/// A base may stand below, in another file, and have a base of its own.
void apply_bases(ResolvedTree& tree, SymbolTable& table, DiagnosticSink& sink);

/// Puts what `over` states in the place of what `base` states. A stack takes the place of the whole stack
/// and of the changes to it; changes to a stack come on top.
void lay_over(ResolvedDeclaration& base, const ResolvedDeclaration& over);

} // namespace sheerpole
