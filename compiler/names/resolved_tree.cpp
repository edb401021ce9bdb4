#include "names/resolved_tree.hpp"

#include "names/resolve.hpp"

#include <algorithm>
#include <tuple>

namespace sheerpole {

namespace {

std::string_view word_of(const Symbol& symbol) {
  switch (symbol.kind) {
  case Symbol::Kind::let:
    return "let";
  case Symbol::Kind::point:
    return "point";
  case Symbol::Kind::declaration:
    return symbol.row->name;
  case Symbol::Kind::poison:
    break;
  }
  return "unknown";
}

std::string place(const SourceSet& sources, SourceId source, std::uint32_t offset) {
  const SourceText& text = sources[source];
  const Position position = text.position(offset);
  return text.name() + ":" + std::to_string(position.line) + ":" + std::to_string(position.column);
}

} // namespace

std::vector<NameUse> ResolvedTree::sorted_uses() const {
  std::vector<NameUse> result;
  result.reserve(uses_.size());
  for (const auto& [place, symbol] : uses_)
    result.push_back({SourceId{static_cast<std::uint32_t>(place >> 32)},
                      static_cast<std::uint32_t>(place & 0xFFFFFFFFu), symbol});
  std::sort(result.begin(), result.end(), [](const NameUse& a, const NameUse& b) {
    return std::tie(a.source, a.offset) < std::tie(b.source, b.offset);
  });
  return result;
}

std::string print_names(const ResolvedTree& tree, const SourceSet& sources) {
  const std::vector<NameUse> uses = tree.sorted_uses();
  std::vector<std::string> used_at(tree.symbols.size());
  for (const NameUse& use : uses) {
    const Span declared = tree[use.symbol].span;
    if (use.symbol == poison_symbol || declared.source != use.source || declared.begin != use.offset)
      used_at[use.symbol.index()] += "  used at " + place(sources, use.source, use.offset) + "\n";
  }
  std::string result;
  for (std::uint32_t i = 1; i < tree.symbols.size(); ++i) {
    const Symbol& symbol = tree[SymbolId{i}];
    result += word_of(symbol);
    result += " " + symbol.name + " at " + place(sources, symbol.span.source, symbol.span.begin) + "\n" +
              used_at[i];
  }
  if (!used_at[poison_symbol.index()].empty())
    result += "unknown\n" + used_at[poison_symbol.index()];
  return result;
}

} // namespace sheerpole
