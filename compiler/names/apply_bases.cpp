#include "names/apply_bases.hpp"

#include "names/lay_over.hpp"

#include <unordered_map>
#include <utility>

namespace sheerpole {

namespace {

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

  void visit(std::size_t index) {
    if (states_[index] != State::fresh)
      return;
    states_[index] = State::open;
    ResolvedDeclaration& declaration = tree_.declarations[index];
    if (!declaration.syntax->from.missing()) {
      if (const ResolvedDeclaration* base = base_of(declaration))
        merge(*base, declaration);
      else
        declaration.incomplete = true;
    }
    states_[index] = State::done;
  }

  /// The base with its own base applied; nullptr when there is none, which has been reported.
  const ResolvedDeclaration* base_of(const ResolvedDeclaration& declaration) {
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
    visit(found->second);
    return &tree_.declarations[found->second];
  }

  static void merge(const ResolvedDeclaration& base, ResolvedDeclaration& declaration) {
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
  std::unordered_map<std::uint32_t, std::size_t> by_symbol_; // looked up only
};

} // namespace

void apply_bases(ResolvedTree& tree, SymbolTable& table, DiagnosticSink& sink) {
  BaseWalk(tree, table, sink).run();
}

} // namespace sheerpole
