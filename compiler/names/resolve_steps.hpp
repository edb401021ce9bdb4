#pragma once

#include "diagnostics/sink.hpp"
#include "kinds/property_row.hpp"
#include "names/resolved_tree.hpp"
#include "names/symbol_table.hpp"
#include "syntax/syntax_tree.hpp"

#include <cstddef>
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

/// Most properties, blocks and items that are copied in one rig: copies of copies could fill any computer.
inline constexpr std::size_t most_copies = 100'000;

/// `from base`: gives each declaration the properties and blocks of its base that it does not state itself.
/// A base may stand below, in another file, and have a base of its own.
void apply_bases(ResolvedTree& tree, SymbolTable& table, DiagnosticSink& sink);

/// Puts what `over` states in the place of what `base` states. A stack takes the place of the whole stack
/// and of the changes to it; changes to a stack come on top.
void lay_over(ResolvedDeclaration& base, const ResolvedDeclaration& over);

/// Binds every name of a value whose property is known: words are compared with the choices of the row,
/// names looked up in the category that the row refers to, all others as named values or points.
void resolve_value(const Value& value, const PropertyRow& row, SymbolTable& table, DiagnosticSink& sink);

/// Binds every name of a value of a `let` or of a point.
void resolve_any_value(const Value& value, SymbolTable& table, DiagnosticSink& sink);

/// Reports a word behind the point of a name that is no side of the boat; false when it did.
bool good_side(const Name& side, DiagnosticSink& sink);

} // namespace sheerpole
