#include "names/resolve_steps.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

bool good_name(const std::string& text) {
  return std::all_of(text.begin(), text.end(),
                     [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; });
}

std::string lower_case(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z')
      c = static_cast<char>(c - 'A' + 'a');
  return text;
}

class Declarer {
public:
  Declarer(const ResolvedTree& tree, SymbolTable& table, DiagnosticSink& sink)
      : tree_(tree), table_(table), sink_(sink) {}

  DeclaredNames run() {
    const bool sister = !tree_.trees.empty() && is_sister_ship(*tree_.trees.back());
    for (const auto& file : tree_.trees) {
      overlaying_ = sister && file == tree_.trees.back();
      declare_file(*file);
    }
    for (const auto& file : tree_.trees) {
      overlaying_ = sister && file == tree_.trees.back();
      declare_one_sided_points(*file);
    }
    if (tree_.what_if != nullptr) {
      overlaying_ = true;
      declare_file(*tree_.what_if);
    }
    return std::move(declared_);
  }

private:
  bool states_over(const Symbol& symbol, SymbolId& id) const {
    if (!overlaying_)
      return false;
    const Symbol* known = table_.lookup(symbol.name, id);
    return known != nullptr && known->kind == symbol.kind && known->row == symbol.row &&
           known->span.source != symbol.span.source;
  }

  void declare(const Name& name, Symbol symbol) {
    if (name.missing())
      return;
    if (!good_name(name.text))
      sink_.report(diagnose("capital-in-name", {{"name", name.text}, {"lower", lower_case(name.text)}})
                       .at(name.span)
                       .edit(name.span, lower_case(name.text), "write `" + lower_case(name.text) + "`"));
    // Its uses mean the same name, so they are no second cause.
    symbol.name = lower_case(name.text);
    symbol.span = name.span;
    SymbolId id;
    if (states_over(symbol, id))
      declared_[&name] = {table_.bind(name.span, id), true};
    else
      declared_[&name] = {table_.declare(std::move(symbol)), false};
    if (!good_name(name.text))
      table_.add_spelling(name.text, declared_[&name].symbol);
  }

  void declare_file(const SyntaxTree& file) {
    for (const Statement& statement : file.statements) {
      if (const Let* let = std::get_if<Let>(&statement))
        declare(let->name, {.kind = Symbol::Kind::let, .let = let});
      else if (const Declaration* declaration = std::get_if<Declaration>(&statement))
        declare_declaration(*declaration);
    }
  }

  void declare_declaration(const Declaration& declaration) {
    const KindRow* row = find_kind(declaration.kind.text);
    if (row == nullptr && !declaration.name.missing() && !table_.knows(declaration.name.text))
      declare(declaration.name, {.kind = Symbol::Kind::poison}); // one cause: its uses stay silent
    if (row == nullptr || row->inside)
      return; // reported when its turn comes
    if (row->category == Category::points)
      declare_points(declaration);
    else if (row->declares() &&
             declaration.side.missing()) // one side is stated of what is declared elsewhere
      declare(declaration.name, {.kind = Symbol::Kind::declaration,
                                 .category = row->category,
                                 .declaration = &declaration,
                                 .row = row});
  }

  void declare_points(const Declaration& declaration) {
    for (const Entry& entry : declaration.block.entries)
      if (const Property* property = std::get_if<Property>(&entry))
        if (property->side.missing()) // `plate-a.port` says more of a point that is declared elsewhere
          declare_point(*property);
  }

  void declare_point(const Property& property) {
    declare(property.name, {.kind = Symbol::Kind::point,
                            .category = Category::point,
                            .declared = &property,
                            .point = &property});
  }

  /// `plate-a.port` without a `plate-a`: each side is stated apart, and the first one declares the name.
  void declare_one_sided_points(const SyntaxTree& file) {
    for (const Statement& statement : file.statements) {
      const Declaration* declaration = std::get_if<Declaration>(&statement);
      if (declaration == nullptr || declaration->kind.text != "points")
        continue;
      for (const Entry& entry : declaration->block.entries) {
        const Property* property = std::get_if<Property>(&entry);
        if (property != nullptr && !property->side.missing() && !table_.knows(property->name.text))
          declare_point(*property);
      }
    }
  }

  const ResolvedTree& tree_;
  SymbolTable& table_;
  DiagnosticSink& sink_;
  DeclaredNames declared_;
  bool overlaying_ = false;
};

} // namespace

bool is_sister_ship(const SyntaxTree& root) {
  return std::any_of(root.statements.begin(), root.statements.end(), [](const Statement& statement) {
    const Declaration* declaration = std::get_if<Declaration>(&statement);
    return declaration != nullptr && declaration->kind.text == "boat" && !declaration->from.missing();
  });
}

DeclaredNames declare_names(const ResolvedTree& tree, SymbolTable& table, DiagnosticSink& sink) {
  return Declarer(tree, table, sink).run();
}

} // namespace sheerpole
