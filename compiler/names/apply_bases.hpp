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

} // namespace sheerpole
