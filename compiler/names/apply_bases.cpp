#include "names/resolve_steps.hpp"

#include <algorithm>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace sheerpole {

namespace {

/// Properties, blocks and items of a declaration, blocks included.
std::size_t size_of(const ResolvedDeclaration& declaration) {
  std::size_t result = declaration.properties.size() + declaration.items.size() + declaration.blocks.size();
  for (const ResolvedDeclaration& block : declaration.blocks)
    result += size_of(block);
  return result;
}

class BaseWalk {
public:
  BaseWalk(ResolvedTree& tree, SymbolTable& table, DiagnosticSink& sink)
      : tree_(tree), table_(table), sink_(sink), states_(tree.declarations.size(), State::fresh) {
    for (std::size_t i = 0; i < tree_.declarations.size(); ++i)
      if (tree_.declarations[i].symbol != poison_symbol)
        by_symbol_.emplace(tree_.declarations[i].symbol.value, i);
  }

  void run() {
    for (std::size_t i = 0; i < states_.size(); ++i)
      visit(i);
  }

private:
  enum class State { fresh, open, done };

  /// Goes down the chain of bases to one that has none or is finished, then merges on the way back. In a
  /// loop, for the chain can be longer than calls may be nested.
  void visit(std::size_t index) {
    std::vector<std::pair<std::size_t, ResolvedDeclaration*>> chain; // a declaration and its base
    for (ResolvedDeclaration* next = &tree_.declarations[index]; next != nullptr;) {
      const auto at = static_cast<std::size_t>(next - tree_.declarations.data());
      if (states_[at] != State::fresh)
        break;
      states_[at] = State::open;
      ResolvedDeclaration* base = next->syntax->from.missing() ? nullptr : base_of(*next);
      chain.emplace_back(at, base);
      next = base;
    }
    for (auto link = chain.rbegin(); link != chain.rend(); ++link) {
      ResolvedDeclaration& declaration = tree_.declarations[link->first];
      if (link->second != nullptr)
        merge(*link->second, declaration);
      else if (!declaration.syntax->from.missing())
        declaration.incomplete = true;
      states_[link->first] = State::done;
    }
  }

  /// The base, whose own base may not be applied yet; nullptr when there is none, which has been reported.
  ResolvedDeclaration* base_of(const ResolvedDeclaration& declaration) {
    const Name& from = declaration.syntax->from;
    const SymbolId id = table_.find(from, from.span, {declaration.kind->category});
    const Symbol& base = tree_[id];
    if (base.poison())
      return nullptr;
    if (base.row != declaration.kind) {
      sink_.report(diagnose("base-of-other-kind", {{"base", base.name},
                                                   {"is", std::string(base.row->name)},
                                                   {"kind", std::string(declaration.kind->name)}})
                       .at(from.span)
                       .and_at(base.span, "declared here"));
      return nullptr;
    }
    const auto found = by_symbol_.find(id.value);
    if (found == by_symbol_.end())
      return nullptr;
    if (states_[found->second] == State::open) {
      sink_.report(diagnose("base-cycle", {{"name", base.name}})
                       .at(from.span, "the chain comes back here")
                       .and_at(base.span, "declared here"));
      return nullptr;
    }
    return &tree_.declarations[found->second];
  }

  void merge(const ResolvedDeclaration& base, ResolvedDeclaration& declaration) {
    const std::size_t size = size_of(base);
    if (too_large_ || size > copies_left_) {
      if (!too_large_)
        sink_.report(diagnose("copies-too-large", {{"name", declaration.syntax->name.text},
                                                   {"limit", std::to_string(most_copies)}})
                         .at(declaration.syntax->from.span));
      too_large_ = true;
      declaration.incomplete = true;
      return;
    }
    copies_left_ -= size;
    ResolvedDeclaration result = declaration;
    result.properties = base.properties;
    result.blocks = base.blocks;
    lay_over(result, declaration);
    result.incomplete = declaration.incomplete || base.incomplete;
    declaration = std::move(result);
  }

  ResolvedTree& tree_;
  SymbolTable& table_;
  DiagnosticSink& sink_;
  std::vector<State> states_;
  std::size_t copies_left_ = most_copies;
  bool too_large_ = false;                                   ///< reported; nothing more is copied
  std::unordered_map<std::uint32_t, std::size_t> by_symbol_; // looked up only
};

bool has_block(const ResolvedDeclaration& declaration, Category category) {
  return std::any_of(declaration.blocks.begin(), declaration.blocks.end(),
                     [&](const ResolvedDeclaration& block) { return block.kind->category == category; });
}

} // namespace

void apply_bases(ResolvedTree& tree, SymbolTable& table, DiagnosticSink& sink) {
  BaseWalk(tree, table, sink).run();
}

void lay_over(ResolvedDeclaration& base, const ResolvedDeclaration& over) {
  for (const ResolvedProperty& property : over.properties) {
    const auto same = std::find_if(base.properties.begin(), base.properties.end(), [&](const auto& each) {
      return each.row != nullptr && each.row == property.row;
    });
    if (same == base.properties.end())
      base.properties.push_back(property);
    else
      *same = property;
  }
  if (has_block(over, Category::stack))
    std::erase_if(base.blocks, [](const ResolvedDeclaration& block) {
      return block.kind->category == Category::stack || block.kind->category == Category::changes;
    });
  base.blocks.insert(base.blocks.end(), over.blocks.begin(), over.blocks.end());
  base.incomplete = base.incomplete || over.incomplete;
}

} // namespace sheerpole
