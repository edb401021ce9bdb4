#pragma once

#include "base/id.hpp"
#include "kinds/kind_row.hpp"
#include "source/span.hpp"
#include "syntax/syntax_tree.hpp"

#include <memory>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace sheerpole {

using SymbolId = Id<struct SymbolTag>;

/// What a name stands for. Symbol 0 is the poison symbol: a name that could not be found, reported once and
/// silent from then on.
struct Symbol {
  enum class Kind { poison, let, point, declaration };
  Kind kind = Kind::poison;
  std::string name = {};
  Category category = Category::none;
  Span span = {}; ///< where it is declared
  const Let* let = nullptr;
  const Property* declared = nullptr;  ///< point: the property that declares it; may state one side only
  const Property* point = nullptr;     ///< point: the one that counts, `declared` or one stated over it
  const Property* port = nullptr;      ///< point: `plate-a.port`, one side stated apart
  const Property* starboard = nullptr; ///< point: `plate-a.starboard`
  const Declaration* declaration = nullptr;
  const KindRow* row = nullptr;

  bool poison() const { return kind == Kind::poison; }
};

inline constexpr SymbolId poison_symbol{0};

/// A property whose name is known. `row` is empty for the properties of a block of points.
struct ResolvedProperty {
  const Property* syntax = nullptr;
  const PropertyRow* row = nullptr;
};

struct ResolvedSetting {
  const Setting* syntax = nullptr;
  const PropertyRow* row = nullptr;
};

/// One line of a stack: the word `line`, or a part.
struct ResolvedItem {
  const Item* syntax = nullptr;
  bool line = false;
  SymbolId part = poison_symbol;
  std::vector<ResolvedSetting> settings;
  bool incomplete = false; ///< a setting is unknown; reported, so what seems to be missing is not
};

/// A declaration of a known kind. With `from`, the properties and blocks of the base come first and those
/// that are stated again are left out.
struct ResolvedDeclaration {
  const Declaration* syntax = nullptr;
  const KindRow* kind = nullptr;
  std::vector<ResolvedProperty> properties;
  std::vector<ResolvedItem> items;
  std::vector<ResolvedDeclaration> blocks;
  SymbolId of = poison_symbol;
  SymbolId on = poison_symbol;            ///< `points on mast`
  std::vector<ResolvedDeclaration> apart; ///< `stay cap-shroud.port`: what one side states apart
  SymbolId symbol = poison_symbol;        ///< of a named declaration
  /// Something in it or in its base is unknown or could not be read. That has been reported; what seems to
  /// be missing from it may be just that, and is not reported again.
  bool incomplete = false;

  const ResolvedProperty* find(std::string_view name) const {
    for (const ResolvedProperty& property : properties)
      if (property.row != nullptr && property.row->name == name)
        return &property;
    return nullptr;
  }
};

/// `expect cap-shroud.port.body = …`
struct ResolvedExpect {
  const Expect* syntax = nullptr;
  SymbolId stay = poison_symbol;
};

/// Where values come from that are stated over others: a layer, a sister ship, the command line.
struct Origin {
  enum class Kind { layer, sister, command_line };
  Kind kind = Kind::layer;
  std::string name; ///< of the layer or the sister ship
  Span span;
};

/// One value stated over another.
struct Override {
  std::string subject;        ///< `plate-a.port`, `cap-shroud`
  std::string property;       ///< `place` of a point, `value` of a `let`, `stack` of a stay
  const Value* was = nullptr; ///< null when nothing was stated before, and for blocks
  const Value* is = nullptr;  ///< null for blocks
  Span was_span = {};
  Span is_span = {};
  Span was_block = {}; ///< of a block: what stands between its braces; empty when there was none
  Span is_block = {};
  std::size_t origin = 0; ///< in ResolvedTree::origins
};

/// A place at which a name is used.
struct NameUse {
  SourceId source;
  std::uint32_t offset = 0; ///< of its first byte
  SymbolId symbol;
};

/// All files of a rig with every name bound to a symbol or to the poison symbol.
class ResolvedTree {
public:
  std::vector<std::shared_ptr<const SyntaxTree>> trees; ///< a used file before the file that uses it
  std::vector<Symbol> symbols{Symbol{}};
  std::vector<ResolvedDeclaration> declarations;
  std::vector<ResolvedExpect> expectations;
  std::vector<Origin> origins;
  std::vector<std::string> unused_lets; ///< names of numbers that nothing uses, in libraries too
  std::vector<Override> overrides;      ///< in the order in which they take effect
  std::unordered_map<const Property*, SymbolId> frames; ///< points on a spar; looked up only
  /// Points in boat axes that a spar carries, where the file stated them first: they move and turn with it
  /// when it is stated over. Looked up only.
  std::unordered_map<const Property*, SymbolId> carried;
  /// The same before anything was stated over it; null where nothing was, or no spar carries anything.
  std::shared_ptr<const ResolvedTree> first;
  std::shared_ptr<const SyntaxTree> what_if; ///< set on the command line; may be null
  SourceId root;                             ///< the file that was asked for
  std::string as_of;                         ///< the layer behind which all were left out; empty: none was

  const Symbol& operator[](SymbolId id) const { return symbols[id.index()]; }
  /// What the name at this place stands for; the poison symbol when it is unknown.
  SymbolId symbol_at(Span span) const {
    const auto found = uses_.find(key(span));
    return found == uses_.end() ? poison_symbol : found->second;
  }
  void bind(Span span, SymbolId symbol) { uses_[key(span)] = symbol; }
  /// All places at which names stand, declarations among them, in the order of files and places.
  std::vector<NameUse> sorted_uses() const;

private:
  static std::uint64_t key(Span span) { return (std::uint64_t{span.source.value} << 32) | span.begin; }
  std::unordered_map<std::uint64_t, SymbolId> uses_; // walked through only to be sorted
};

} // namespace sheerpole
