#include "names/resolve.hpp"

#include "base/edit_distance.hpp"
#include "diagnostics/catalogue.hpp"
#include "kinds/glossary.hpp"
#include "names/overlays.hpp"
#include "names/resolve_steps.hpp"
#include "names/symbol_table.hpp"

#include <algorithm>
#include <set>

namespace sheerpole {

namespace {

/// The words of a table, as text.
std::vector<std::string> texts(std::span<const std::string_view> words) {
  return {words.begin(), words.end()};
}

class Resolver {
public:
  Resolver(ResolvedTree& tree, DiagnosticSink& sink, std::string as_of)
      : tree_(tree), sink_(sink), table_(tree, sink), overlays_(tree, sink, std::move(as_of)) {}

  void run() {
    for (const auto& file : tree_.trees)
      check_language_line(*file);
    declared_ = declare_names(tree_, table_, sink_);
    for (const auto& file : tree_.trees) {
      if (file == tree_.trees.back() && is_sister_ship(*file))
        origin_ = overlays_.add_origin({Origin::Kind::sister, title_of_boat(*file), span_of_boat(*file)});
      resolve_file(*file);
    }
    origin_ = Overlays::no_origin;
    if (tree_.what_if != nullptr) {
      origin_ =
          overlays_.add_origin({Origin::Kind::command_line, "command line", {tree_.what_if->source, 0, 0}});
      resolve_file(*tree_.what_if);
    }
    const auto first =
        overlays_.empty() || !carries_points() ? nullptr : std::make_shared<ResolvedTree>(tree_);
    overlays_.apply();
    apply_bases(tree_, table_, sink_);
    if (first != nullptr)
      note_carried(first);
    table_.report_unknown_names();
    if (!sink_.has_errors() && holds_a_rig(tree_.trees))
      report_unused_lets();
  }

private:
  /// Whether the file that was asked for declares a stay or a spar. What is only numbers is for others to
  /// use.
  bool holds_a_rig(const auto& files) const {
    for (const auto& file : files)
      for (const Statement& statement : file->statements)
        if (const auto* here = std::get_if<Declaration>(&statement);
            here != nullptr && here->kind.span.source == tree_.root &&
            (here->kind.text == "stay" || here->kind.text == "spar"))
          return true;
    return false;
  }
  bool carries_points() const {
    return std::any_of(tree_.declarations.begin(), tree_.declarations.end(),
                       [](const ResolvedDeclaration& each) {
                         return each.kind->category == Category::spar && each.find("carries") != nullptr;
                       });
  }
  /// A point that was stated anew stands where it was measured last, and does not turn with what came
  /// before.
  void note_carried(const std::shared_ptr<const ResolvedTree>& first) {
    tree_.first = first;
    for (const ResolvedDeclaration& spar : tree_.declarations)
      if (const ResolvedProperty* carries = spar.find("carries");
          carries != nullptr && spar.kind->category == Category::spar)
        for (const Stop& stop : carries->syntax->value.stops) {
          const SymbolId id = tree_.symbol_at(stop.expression.span);
          for (const auto slot : {&Symbol::point, &Symbol::port, &Symbol::starboard})
            if (const Property* point = tree_[id].*slot;
                point != nullptr && point == (*first)[id].*slot && !tree_.frames.contains(point))
              tree_.carried[point] = spar.symbol;
        }
  }
  /// Of the file that was asked for: a library may hold more than one boat needs.
  void report_unused_lets() {
    std::set<Span> stated; // where a name is stated, in the file or over it, it is not used
    for (const auto& [name, declared] : declared_)
      stated.insert({name->span.source, name->span.begin, 0});
    std::vector<bool> used(tree_.symbols.size());
    for (const NameUse& use : tree_.sorted_uses())
      if (!stated.contains({use.source, use.offset, 0}))
        used[use.symbol.index()] = true;
    for (std::size_t i = 0; i < tree_.symbols.size(); ++i)
      if (const Symbol& symbol = tree_.symbols[i]; symbol.kind == Symbol::Kind::let && !used[i]) {
        tree_.unused_lets.push_back(symbol.name);
        if (symbol.span.source != tree_.root)
          continue;
        sink_.report(diagnose("let-not-used", {{"name", symbol.name}}).at(symbol.span).about(symbol.name));
      }
  }
  static const Declaration* boat_of(const SyntaxTree& file) {
    for (const Statement& statement : file.statements)
      if (const auto* boat = std::get_if<Declaration>(&statement); boat && boat->kind.text == "boat")
        return boat;
    return nullptr;
  }
  static std::string title_of_boat(const SyntaxTree& file) {
    const Declaration* boat = boat_of(file);
    return boat != nullptr && boat->title ? boat->title->text : "this boat";
  }
  static Span span_of_boat(const SyntaxTree& file) { return boat_of(file)->kind.span; }

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
        resolve_let(*let);
      else if (const Expect* expect = std::get_if<Expect>(&statement))
        resolve_expect(*expect);
      else if (const Declaration* declaration = std::get_if<Declaration>(&statement))
        resolve_top(*declaration);
    }
  }

  void resolve_let(const Let& let) {
    resolve_any_value(let.value, table_, sink_);
    if (const DeclaredName name = declared(let.name); name.overlay)
      overlays_.add_let(name.symbol, let, origin_);
  }

  void resolve_expect(const Expect& expect) {
    resolve_any_value(expect.value, table_, sink_);
    const SymbolId stay = table_.find(expect.stay, expect.stay.span, {Category::stay});
    const std::vector<std::string> known = texts(stay_quantities());
    const std::string& quantity = expect.quantity.text;
    if (!good_side(expect.side, sink_))
      return;
    if (std::find(known.begin(), known.end(), quantity) == known.end()) {
      const Span place = expect.quantity.missing() ? expect.stay.span : expect.quantity.span;
      auto builder =
          diagnose("unknown-choice", {{"written", quantity.empty() ? "nothing" : "`" + quantity + "`"},
                                      {"name", "what is expected of a stay"},
                                      {"known", listed(known)}})
              .at(place);
      sink_.report(with_nearest(std::move(builder), quantity, place, known));
      return;
    }
    tree_.expectations.push_back({&expect, stay});
  }

  DeclaredName declared(const Name& name) const {
    const auto found = declared_.find(&name);
    return found == declared_.end() ? DeclaredName{} : found->second;
  }

  void resolve_top(const Declaration& declaration) {
    const KindRow* row = find_kind(declaration.kind.text);
    if (row == nullptr || row->inside) {
      report_unknown_kind(declaration, row);
      return;
    }
    check_name(declaration, *row);
    ResolvedDeclaration resolved = resolve_block(declaration, *row);
    const DeclaredName name = declared(declaration.name);
    resolved.symbol = name.symbol;
    resolve_of(declaration, *row, resolved);
    if (!declaration.side.missing()) {
      add_one_side(std::move(resolved));
      return;
    }
    if (name.overlay || (row->category == Category::boat && in_what_if()))
      overlays_.add_declaration(std::move(resolved), origin_);
    else if (!in_what_if() || row->category == Category::record) // a wish; nothing else stands there anew
      tree_.declarations.push_back(std::move(resolved));
    if (row->holds_overlays)
      resolve_layer(declaration);
  }

  bool in_what_if() const {
    return origin_ != Overlays::no_origin && tree_.origins[origin_].kind == Origin::Kind::command_line;
  }

  /// `stay cap-shroud.port { … }`
  void add_one_side(ResolvedDeclaration resolved) {
    const Declaration& declaration = *resolved.syntax;
    if (!resolved.kind->one_side) {
      sink_.report(diagnose("side-not-here", {{"name", declaration.name.text},
                                              {"wanted", std::string(describe(resolved.kind->category))}})
                       .at(declaration.side.span));
      return;
    }
    if (!good_side(declaration.side, sink_))
      return;
    if (const ResolvedProperty* sides = resolved.find("sides")) {
      sink_.report(
          diagnose("sides-of-one-side", {{"stay", declaration.name.text}, {"side", declaration.side.text}})
              .at(sides->syntax->name.span));
      return;
    }
    resolved.symbol = table_.find(declaration.name, declaration.name.span, {resolved.kind->category});
    if (resolved.symbol != poison_symbol)
      overlays_.add_declaration(std::move(resolved), origin_);
  }

  /// What stands in a layer states something over declarations outside of it.
  void resolve_layer(const Declaration& layer) {
    const std::size_t outer = origin_;
    origin_ = overlays_.add_origin({Origin::Kind::layer, layer.name.text, layer.kind.span});
    for (const Entry& entry : layer.block.entries) {
      const Declaration* inner = std::get_if<Declaration>(&entry);
      if (inner == nullptr)
        continue;
      const KindRow* row = find_kind(inner->kind.text);
      if (row == nullptr || row->inside || !(row->declares() || row->free_properties)) {
        report_unknown_kind(*inner, row);
        continue;
      }
      ResolvedDeclaration resolved = resolve_block(*inner, *row);
      if (row->free_properties)
        continue;
      if (!inner->side.missing()) {
        add_one_side(std::move(resolved));
        continue;
      }
      if (row->category != Category::boat || !inner->name.missing())
        resolved.symbol = table_.find(inner->name, inner->name.span, {row->category});
      if (inner->name.missing() && row->category != Category::boat)
        sink_.report(diagnose("name-missing", {{"kind", std::string(row->name)}}).at(inner->kind.span));
      else if (const Symbol& target = tree_[resolved.symbol]; !target.poison() && target.row != row)
        sink_.report(diagnose("base-of-other-kind", {{"base", target.name},
                                                     {"is", std::string(target.row->name)},
                                                     {"kind", std::string(row->name)}})
                         .at(inner->name.span)
                         .and_at(target.span, "declared here"));
      else if (!target.poison() || row->category == Category::boat)
        overlays_.add_declaration(std::move(resolved), origin_);
    }
    origin_ = outer;
  }

  void check_name(const Declaration& declaration, const KindRow& row) {
    const Name& name = declaration.name;
    if (name.missing()) {
      if (row.naming != Naming::none && row.naming != Naming::may)
        sink_.report(diagnose("name-missing", {{"kind", std::string(row.name)}}).at(declaration.kind.span));
      return;
    }
    if (row.category == Category::rule && find_entry(name.text) != nullptr)
      sink_.report(diagnose("rule-name-taken", {{"rule", name.text}}).at(name.span));
    std::vector<std::string> known;
    std::string_view slug = "unknown-choice";
    if (row.naming == Naming::choice) {
      known = texts(row.name_choices);
    } else if (row.naming == Naming::finding) {
      slug = "unknown-finding";
      for (const CatalogueEntry* entry : all_entries())
        known.emplace_back(entry->slug);
      for (const Symbol& symbol : tree_.symbols)
        if (symbol.category == Category::rule)
          known.push_back(symbol.name);
    } else {
      return;
    }
    if (std::find(known.begin(), known.end(), name.text) != known.end())
      return;
    std::vector<Argument> arguments{{"written", "`" + name.text + "`"}, {"name", std::string(row.name)}};
    if (row.naming == Naming::choice)
      arguments.push_back({"known", listed(known)});
    sink_.report(
        with_nearest(diagnose(slug, std::move(arguments)).at(name.span), name.text, name.span, known));
  }

  void report_unknown_kind(const Declaration& declaration, const KindRow* misplaced) {
    if (declaration.kind.missing())
      return;
    if (misplaced != nullptr) {
      sink_.report(diagnose("block-not-here", {{"kind", declaration.kind.text}}).at(declaration.kind.span));
      return;
    }
    auto finding = diagnose("unknown-kind", {{"kind", declaration.kind.text}}).at(declaration.kind.span);
    // A word of the trade for what has another word here is no slip of the finger.
    if (const std::string meant(kind_for_trade_word(declaration.kind.text)); !meant.empty())
      sink_.report(std::move(finding).edit(declaration.kind.span, meant, "write `" + meant + "`"));
    else
      sink_.report(with_nearest(std::move(finding), declaration.kind.text, declaration.kind.span,
                                row_names(all_kinds())));
  }

  void resolve_of(const Declaration& declaration, const KindRow& row, ResolvedDeclaration& resolved) {
    if (!declaration.on.missing()) {
      if (row.on_spar)
        resolved.on = table_.find(declaration.on, declaration.on.span, {Category::spar});
      else
        sink_.report(diagnose("on-not-here", {{"kind", std::string(row.name)}}).at(declaration.on.span));
    }
    if (row.of == Category::none) {
      if (!declaration.of.missing())
        sink_.report(diagnose("of-not-here", {{"kind", std::string(row.name)}}).at(declaration.of.span));
      return;
    }
    if (declaration.of.missing() && row.of_optional)
      return;
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
    if (row.on_spar && !declaration.on.missing())
      frame_ = table_.find(declaration.on, declaration.on.span, {Category::spar});
    ResolvedDeclaration resolved;
    resolved.syntax = &declaration;
    resolved.kind = &row;
    for (const Entry& entry : declaration.block.entries) {
      if (const Property* property = std::get_if<Property>(&entry))
        resolve_property(*property, row, resolved);
      else if (const Item* item = std::get_if<Item>(&entry))
        resolve_item(*item, row, resolved);
      else if (const Declaration* inner = std::get_if<Declaration>(&entry)) {
        if (!row.holds_overlays) // these are read by resolve_layer()
          resolve_inner(*inner, row, resolved);
      } else
        resolved.incomplete = true; // could not be read
    }
    frame_ = poison_symbol;
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
      if (earlier.kind == kind && kind->of == Category::none)
        sink_.report(diagnose("block-twice", {{"kind", inner.kind.text}})
                         .at(inner.kind.span, "a second one here")
                         .and_at(earlier.syntax->kind.span, "the first one"));
    ResolvedDeclaration block = resolve_block(inner, *kind);
    resolve_of(inner, *kind, block);
    resolved.blocks.push_back(std::move(block));
  }

  void resolve_property(const Property& property, const KindRow& row, ResolvedDeclaration& resolved) {
    if (property.name.missing()) {
      resolved.incomplete = true;
      return;
    }
    if (row.free_properties) {
      resolve_any_value(property.value, table_, sink_);
      resolve_point(property);
      resolved.properties.push_back({&property, nullptr});
      return;
    }
    const PropertyRow* known = find_property(row.properties, property.name.text);
    if (known == nullptr || !property.side.missing()) {
      const std::string name =
          property.name.text + (property.side.missing() ? "" : "." + property.side.text);
      resolved.incomplete = true;
      if (row.category == Category::reading && property.name.text == "hoist-gap") {
        sink_.report(diagnose("hoist-gap-in-reading", {{"stay", resolved.syntax->of.text}})
                         .at(property.name.span)
                         .about(resolved.syntax->of.text)
                         .edit(property.name.span, "hoist-offset",
                               "if it was hung lower than the bearing by this much, write `hoist-offset`"));
        return;
      }
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
    if (known->refers_to != Category::cord || !report_cord_not_declared(property, *resolved.syntax))
      resolve_value(property.value, *known, table_, sink_);
    resolved.properties.push_back({&property, known});
  }

  /// A cord that is declared nowhere comes with the edit that declares it, unless one is called nearly so.
  bool report_cord_not_declared(const Property& property, const Declaration& reading) {
    const Expression& stated = property.value.expression();
    if (stated.kind != ExpressionKind::name || !stated.side.missing() || table_.knows(stated.text))
      return false;
    std::vector<std::string> cords;
    for (const Symbol& symbol : tree_.symbols)
      if (symbol.category == Category::cord)
        cords.push_back(symbol.name);
    if (nearest_name(stated.text, cords))
      return false;
    table_.bind(stated.span, poison_symbol);
    // One cord that is not declared is one cause, however many knots it has.
    if (!cords_not_declared_.insert(stated.text).second)
      return true;
    const Span kind = reading.kind.span;
    sink_.report(diagnose("cord-not-declared", {{"cord", stated.text}, {"stay", reading.of.text}})
                     .at(stated.span)
                     .about(reading.of.text)
                     .edit({kind.source, kind.begin, kind.begin}, "cord " + stated.text + " { }\n",
                           "declare the cord: `cord " + stated.text + " { }`"));
    return true;
  }

  void resolve_point(const Property& property) {
    if (frame_ != poison_symbol)
      tree_.frames[&property] = frame_;
    const DeclaredName name = declared(property.name);
    if (property.side.missing() && name.symbol != poison_symbol && !name.overlay)
      return; // declares it
    if (!good_side(property.side, sink_))
      return;
    SymbolId id = name.symbol;
    if (id == poison_symbol)
      id = table_.find(property.name, property.name.span, {Category::point});
    if (id == poison_symbol)
      return;
    if (origin_ != Overlays::no_origin && tree_[id].span.source != property.name.span.source) {
      overlays_.add_point(id, property, origin_);
      return;
    }
    if (origin_ != Overlays::no_origin && tree_.origins[origin_].kind == Origin::Kind::layer) {
      overlays_.add_point(id, property, origin_);
      return;
    }
    Symbol& point = tree_.symbols[id.index()];
    const Property*& side = property.side.text == "port" ? point.port : point.starboard;
    if (side == nullptr) {
      side = &property;
      return;
    }
    sink_.report(diagnose("property-twice", {{"name", property.name.text + "." + property.side.text}})
                     .at(property.name.span, "stated again here")
                     .and_at(side->name.span, "stated here first"));
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
  Overlays overlays_;
  DeclaredNames declared_;
  std::size_t origin_ = Overlays::no_origin; ///< of what is being resolved
  std::set<std::string> cords_not_declared_;
  SymbolId frame_ = poison_symbol; ///< the spar that the points being resolved stand on
};

} // namespace

ResolvedTree resolve(std::vector<std::shared_ptr<const SyntaxTree>> trees,
                     std::shared_ptr<const SyntaxTree> what_if, DiagnosticSink& sink,
                     const std::string& as_of) {
  ResolvedTree tree;
  tree.what_if = std::move(what_if);
  tree.trees = std::move(trees);
  tree.as_of = as_of;
  if (!tree.trees.empty())
    tree.root = tree.trees.back()->source;
  Resolver(tree, sink, as_of).run();
  return tree;
}

} // namespace sheerpole
