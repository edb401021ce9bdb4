#include "names/resolve.hpp"

#include "names/apply_bases.hpp"
#include "names/nearest_edit.hpp"
#include "names/resolve_value.hpp"
#include "names/symbol_table.hpp"

#include <algorithm>

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

class Resolver {
public:
  Resolver(ResolvedTree& tree, DiagnosticSink& sink) : tree_(tree), sink_(sink), table_(tree, sink) {}

  void run() {
    for (const auto& file : tree_.trees)
      declare_file(*file);
    for (const auto& file : tree_.trees)
      declare_one_sided_points(*file);
    for (const auto& file : tree_.trees)
      resolve_file(*file);
    apply_bases(tree_, table_, sink_);
    table_.report_unknown_names();
  }

private:
  void declare_name(const Name& name, Symbol symbol) {
    if (name.missing())
      return;
    if (!good_name(name.text))
      sink_.report(diagnose("capital-in-name", {{"name", name.text}, {"lower", lower_case(name.text)}})
                       .at(name.span)
                       .edit(name.span, lower_case(name.text), "write `" + lower_case(name.text) + "`"));
    symbol.name = name.text;
    symbol.span = name.span;
    symbol_of_name_[&name] = table_.declare(std::move(symbol));
  }

  void declare_file(const SyntaxTree& file) {
    check_language_line(file);
    for (const Statement& statement : file.statements) {
      if (const Let* let = std::get_if<Let>(&statement)) {
        declare_name(let->name, {.kind = Symbol::Kind::let, .let = let});
      } else if (const Declaration* declaration = std::get_if<Declaration>(&statement)) {
        const KindRow* row = find_kind(declaration->kind.text);
        if (row == nullptr)
          continue; // reported when its turn comes
        if (row->category == Category::points)
          declare_points(*declaration);
        else if (row->named)
          declare_name(declaration->name, {.kind = Symbol::Kind::declaration,
                                           .category = row->category,
                                           .declaration = declaration,
                                           .row = row});
      }
    }
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
          declare_name(property->name,
                       {.kind = Symbol::Kind::point, .category = Category::point, .point = property});
      }
    }
  }

  void declare_points(const Declaration& declaration) {
    for (const Entry& entry : declaration.block.entries)
      if (const Property* property = std::get_if<Property>(&entry))
        if (property->side.missing()) // `plate-a.port` says more of a point that is declared elsewhere
          declare_name(property->name,
                       {.kind = Symbol::Kind::point, .category = Category::point, .point = property});
  }

  void check_language_line(const SyntaxTree& file) {
    const LanguageLine* line = nullptr;
    bool first = true;
    for (const Statement& statement : file.statements) {
      if (const auto* here = std::get_if<LanguageLine>(&statement)) {
        if (line != nullptr)
          sink_.report(diagnose("language-line-twice").at(here->span).and_at(line->span, "the first one"));
        else if (!first)
          sink_.report(diagnose("language-line-not-first").at(here->span));
        line = here;
        if (here->version != "1" && !here->version.empty())
          sink_.report(diagnose("language-version", {{"version", here->version}})
                           .at(here->span)
                           .edit(here->span, "language 1", "write `language 1`"));
      }
      first = false;
    }
    if (line == nullptr)
      sink_.report(
          diagnose("language-line-missing")
              .at({file.source, 0, 0})
              .certain_edit({file.source, 0, 0}, "language 1\n", "put `language 1` on the first line"));
  }

  void resolve_file(const SyntaxTree& file) {
    for (const Statement& statement : file.statements) {
      if (const Let* let = std::get_if<Let>(&statement))
        resolve_any_value(let->value, table_, sink_);
      else if (const Declaration* declaration = std::get_if<Declaration>(&statement))
        resolve_top(*declaration);
    }
  }

  void resolve_top(const Declaration& declaration) {
    const KindRow* row = find_kind(declaration.kind.text);
    if (row == nullptr || row->category == Category::stack) {
      report_unknown_kind(declaration, row);
      return;
    }
    if (row->named && declaration.name.missing())
      sink_.report(diagnose("name-missing", {{"kind", std::string(row->name)}}).at(declaration.kind.span));
    ResolvedDeclaration resolved = resolve_block(declaration, *row);
    if (const auto found = symbol_of_name_.find(&declaration.name); found != symbol_of_name_.end())
      resolved.symbol = found->second;
    resolve_of(declaration, *row, resolved);
    tree_.declarations.push_back(std::move(resolved));
  }

  void report_unknown_kind(const Declaration& declaration, const KindRow* misplaced) {
    if (declaration.kind.missing())
      return;
    if (misplaced != nullptr) {
      sink_.report(diagnose("block-not-here", {{"kind", declaration.kind.text}}).at(declaration.kind.span));
      return;
    }
    sink_.report(
        with_nearest(diagnose("unknown-kind", {{"kind", declaration.kind.text}}).at(declaration.kind.span),
                     declaration.kind.text, declaration.kind.span, row_names(all_kinds())));
  }

  void resolve_of(const Declaration& declaration, const KindRow& row, ResolvedDeclaration& resolved) {
    if (row.of == Category::none) {
      if (!declaration.of.missing())
        sink_.report(diagnose("of-not-here", {{"kind", std::string(row.name)}}).at(declaration.of.span));
      return;
    }
    if (declaration.of.missing()) {
      sink_.report(diagnose("of-missing",
                            {{"kind", std::string(row.name)}, {"wanted", std::string(describe(row.of))}})
                       .at(declaration.kind.span));
      return;
    }
    resolved.of = table_.find(declaration.of, declaration.of.span, {row.of});
    good_side(declaration.of_side, sink_);
  }

  ResolvedDeclaration resolve_block(const Declaration& declaration, const KindRow& row) {
    ResolvedDeclaration resolved;
    resolved.syntax = &declaration;
    resolved.kind = &row;
    for (const Entry& entry : declaration.block.entries) {
      if (const Property* property = std::get_if<Property>(&entry))
        resolve_property(*property, row, resolved);
      else if (const Item* item = std::get_if<Item>(&entry))
        resolve_item(*item, row, resolved);
      else if (const Declaration* inner = std::get_if<Declaration>(&entry))
        resolve_inner(*inner, row, resolved);
      else
        resolved.incomplete = true; // could not be read
    }
    return resolved;
  }

  void resolve_inner(const Declaration& inner, const KindRow& row, ResolvedDeclaration& resolved) {
    const auto& blocks = row.blocks;
    const KindRow* kind = find_kind(inner.kind.text);
    if (std::find(blocks.begin(), blocks.end(), inner.kind.text) == blocks.end() || kind == nullptr) {
      report_unknown_kind(inner, kind);
      resolved.incomplete = true;
      return;
    }
    for (const ResolvedDeclaration& earlier : resolved.blocks)
      if (earlier.kind == kind)
        sink_.report(diagnose("block-twice", {{"kind", inner.kind.text}})
                         .at(inner.kind.span, "a second one here")
                         .and_at(earlier.syntax->kind.span, "the first one"));
    resolved.blocks.push_back(resolve_block(inner, *kind));
  }

  void resolve_property(const Property& property, const KindRow& row, ResolvedDeclaration& resolved) {
    if (property.name.missing()) {
      resolved.incomplete = true;
      return;
    }
    if (row.free_properties) {
      resolve_point_side(property);
      resolve_any_value(property.value, table_, sink_);
      resolved.properties.push_back({&property, nullptr});
      return;
    }
    const PropertyRow* known = find_property(row.properties, property.name.text);
    if (known == nullptr || !property.side.missing()) {
      const std::string name =
          property.name.text + (property.side.missing() ? "" : "." + property.side.text);
      resolved.incomplete = true;
      report_unknown_property("unknown-property", {property.name.text, property.name.span}, name, row.name,
                              row.properties);
      return;
    }
    for (const ResolvedProperty& earlier : resolved.properties) {
      if (earlier.row == known) {
        sink_.report(diagnose("property-twice", {{"name", property.name.text}})
                         .at(property.name.span, "stated again here")
                         .and_at(earlier.syntax->name.span, "stated here first"));
        return;
      }
    }
    resolve_value(property.value, *known, table_, sink_);
    resolved.properties.push_back({&property, known});
  }

  void resolve_point_side(const Property& property) {
    if (property.side.missing() || !good_side(property.side, sink_))
      return;
    SymbolId id = tree_.symbol_at(property.name.span);
    if (id == poison_symbol)
      id = table_.find(property.name, property.name.span, {Category::point});
    if (id == poison_symbol)
      return;
    Symbol& point = tree_.symbols[id.index()];
    const Property*& side = property.side.text == "port" ? point.port : point.starboard;
    if (side == nullptr) // else it is stated twice; reported with the points
      side = &property;
  }

  void report_unknown_property(std::string_view slug, const Name& name, const std::string& shown,
                               std::string_view owner, std::span<const PropertyRow> rows) {
    const std::vector<std::string> names = row_names(rows);
    sink_.report(with_nearest(
        diagnose(slug, {{"name", shown}, {"owner", std::string(owner)}, {"known", listed(names)}})
            .at(name.span),
        name.text, name.span, names));
  }

  void resolve_item(const Item& item, const KindRow& row, ResolvedDeclaration& resolved) {
    if (!row.holds_items) {
      sink_.report(diagnose("item-not-here", {{"name", item.name.text}, {"kind", std::string(row.name)}})
                       .at(item.span));
      resolved.incomplete = true;
      return;
    }
    ResolvedItem result;
    result.syntax = &item;
    std::span<const PropertyRow> rows = line_settings();
    std::string_view owner = "line";
    if (item.name.text == "line") {
      result.line = true;
    } else {
      result.part = table_.find(item.name, item.name.span, {Category::part});
      const Symbol& part = tree_[result.part];
      if (part.poison()) {
        resolved.items.push_back(std::move(result));
        return;
      }
      rows = part.row->settings;
      owner = part.row->name;
    }
    for (const Setting& setting : item.settings) {
      const PropertyRow* known = find_property(rows, setting.name.text);
      if (known == nullptr) {
        result.incomplete = true;
        if (!setting.name.missing())
          report_unknown_property("unknown-setting", setting.name, setting.name.text, owner, rows);
        continue;
      }
      resolve_value(setting.value, *known, table_, sink_);
      result.settings.push_back({&setting, known});
    }
    resolved.items.push_back(std::move(result));
  }

  ResolvedTree& tree_;
  DiagnosticSink& sink_;
  SymbolTable table_;
  std::unordered_map<const Name*, SymbolId> symbol_of_name_; // looked up only
};

} // namespace

ResolvedTree resolve(std::vector<std::shared_ptr<const SyntaxTree>> trees, DiagnosticSink& sink) {
  ResolvedTree tree;
  tree.trees = std::move(trees);
  if (!tree.trees.empty())
    tree.root = tree.trees.back()->source;
  Resolver(tree, sink).run();
  return tree;
}

} // namespace sheerpole
