#pragma once

#include "diagnostics/sink.hpp"
#include "names/resolved_tree.hpp"

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole {

/// What is stated over other declarations, kept until all of these are known and then put in their place in
/// one order: one side of a stay, the sister ship, the layers from designed to fitted, the command line.
class Overlays {
public:
  /// Layers after `as_of` are left out; empty: none is.
  Overlays(ResolvedTree& tree, DiagnosticSink& sink, std::string as_of)
      : tree_(tree), sink_(sink), as_of_(std::move(as_of)) {}

  /// `none` for a side that a stay's own file states apart.
  static constexpr std::size_t no_origin = static_cast<std::size_t>(-1);

  std::size_t add_origin(Origin origin);
  void add_let(SymbolId symbol, const Let& let, std::size_t origin);
  void add_point(SymbolId symbol, const Property& property, std::size_t origin);
  void add_declaration(ResolvedDeclaration over, std::size_t origin);

  bool empty() const { return overlays_.empty(); }
  /// Puts everything in its place; reports what each origin replaces.
  void apply();

private:
  struct Overlay {
    std::size_t origin = no_origin;
    SymbolId symbol;
    const Let* let = nullptr;
    const Property* point = nullptr;
    ResolvedDeclaration declaration = {};
  };

  int rank(const Overlay& overlay) const;
  static int rank_of_layer(std::string_view name);
  bool left_out(const Overlay& overlay) const;
  void apply(const Overlay& overlay);
  void apply_let(const Overlay& overlay);
  void apply_point(const Overlay& overlay);
  void apply_declaration(const Overlay& overlay);
  void apply_to(ResolvedDeclaration& target, const Overlay& overlay, const std::string& subject);
  ResolvedDeclaration* target_of(const Overlay& overlay);
  /// The property as the declaration or the chain of its bases states it; null when none does.
  const ResolvedProperty* stated(const ResolvedDeclaration& declaration, std::string_view name);
  /// A measured value stays when a layer states another one that is not measured; true when it does.
  bool measured_wins(std::size_t origin, const Value* was, const Value& is, const std::string& what);
  /// What a sister ship's boat states over the one that she is made from.
  void record_sister();
  void record(std::size_t origin, Override override);
  void report_origins();

  ResolvedTree& tree_;
  DiagnosticSink& sink_;
  std::string as_of_;
  std::vector<Overlay> overlays_;
  /// The last declaration of a kind by its symbol; of boats by none. Made when it is first asked for.
  std::map<std::pair<const KindRow*, SymbolId>, ResolvedDeclaration*> last_of_;
};

} // namespace sheerpole
