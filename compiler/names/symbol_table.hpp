#pragma once

#include "diagnostics/diagnostic.hpp"
#include "diagnostics/sink.hpp"
#include "names/resolved_tree.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace sheerpole {

/// The names that the files of a rig declare. One name stands for one thing in all files together.
class SymbolTable {
public:
  SymbolTable(ResolvedTree& tree, DiagnosticSink& sink);

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

  /// Lets a spelling with a slip stand for the symbol as well.
  void add_spelling(const std::string& name, SymbolId id) { by_name_.emplace(name, id); }

  bool knows(const std::string& name) const { return by_name_.count(name) > 0; }

private:
  template <class Fits>
  void add_unknown(const Name& name, std::string_view wanted, const Fits& fits);
  /// The name among the symbols that fit which is nearest to this one.
  template <class Fits>
  std::optional<std::string> nearest(const std::string& name, const Fits& fits);
  bool report_unspaced_minus(const Name& name);

  ResolvedTree& tree_;
  DiagnosticSink& sink_;
  std::unordered_map<std::string, SymbolId> by_name_; // looked up only
  std::vector<Diagnostic> unknown_;
  std::unordered_map<std::string, std::size_t> unknown_names_; ///< place in unknown_; looked up only
  std::size_t comparing_left_; ///< how much may still be looked for near names
};

/// The names of rows of a table, in its order.
template <class Row>
std::vector<std::string> row_names(std::span<const Row> rows) {
  std::vector<std::string> result;
  for (const Row& row : rows)
    result.emplace_back(row.name);
  return result;
}

/// "a, b, c"; "nothing" for none.
std::string listed(const std::vector<std::string>& names);

/// Adds the edit "write `near`" when one of the candidates is near to what was written.
DiagnosticBuilder with_nearest(DiagnosticBuilder builder, std::string_view written, Span span,
                               const std::vector<std::string>& candidates);

} // namespace sheerpole
