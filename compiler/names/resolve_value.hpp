#pragma once

#include "diagnostics/sink.hpp"
#include "kinds/property_row.hpp"
#include "names/symbol_table.hpp"
#include "syntax/syntax_tree.hpp"

namespace sheerpole {

/// Binds every name of a value whose property is known: words are compared with the choices of the row,
/// names looked up in the category that the row refers to, all others as named values or points.
void resolve_value(const Value& value, const PropertyRow& row, SymbolTable& table, DiagnosticSink& sink);

/// Binds every name of a value of a `let` or of a point.
void resolve_any_value(const Value& value, SymbolTable& table, DiagnosticSink& sink);

/// Reports a word behind the point of a name that is no side of the boat; false when it did.
bool good_side(const Name& side, DiagnosticSink& sink);

} // namespace sheerpole
