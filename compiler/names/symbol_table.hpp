#pragma once

#include "diagnostics/sink.hpp"
#include "names/resolved_tree.hpp"

#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace sheerpole {

/// The names that the files of a rig declare. One name stands for one thing in all files together.
class SymbolTable {
public:
  SymbolTable(ResolvedTree& tree, DiagnosticSink& sink) : tree_(tree), sink_(sink) {}

  /// Enters a name; a clash reports both places and keeps the first.
  SymbolId declare(Symbol symbol);

  /// The symbol of this name for any of `wanted`. Unknown, or of another category: reported with the
  /// nearest name, bound to poison.
  SymbolId find(const Name& name, Span whole, const std::vector<Category>& wanted);

  /// For a name inside an expression: a `let` or a point.
  SymbolId find_value(const Name& name, Span whole);

  /// Reports the names that were not found: one finding a name, with all its places.
  void report_unknown_names();

  /// The symbol of this name, whatever it is; null when there is none.
  const Symbol* lookup(const std::string& name, SymbolId& id) const;
  /// Notes that the name at this place stands for the symbol.
  SymbolId bind(Span span, SymbolId symbol) {
    tree_.bind(span, symbol);
    return symbol;
  }

  bool knows(const std::string& name) const { return by_name_.count(name) > 0; }

private:
  void add_unknown(const Name& name, std::string_view wanted, const std::vector<std::string>& candidates);
  bool report_unspaced_minus(const Name& name);

  ResolvedTree& tree_;
  DiagnosticSink& sink_;
  std::unordered_map<std::string, SymbolId> by_name_; // looked up only
  std::vector<std::pair<std::string, Diagnostic>> unknown_;
};

} // namespace sheerpole
