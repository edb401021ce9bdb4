#include "names/overlays.hpp"

#include "names/resolve_steps.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

constexpr std::size_t most_origins = 4; ///< shown of an origin that replaces many values

bool is_measured(const Value& value) {
  return value.source && value.source->word == "measured";
}

std::string dotted(const std::string& name, const Name& side) {
  return side.missing() ? name : name + "." + side.text;
}

/// Where the block of this kind stands that the declaration has so far; empty when it has none.
Span block_of(const ResolvedDeclaration& declaration, const KindRow* kind) {
  for (const ResolvedDeclaration& block : declaration.blocks)
    if (block.kind == kind)
      return block.syntax->block.span;
  return {};
}

/// Whether both state the same property, or both something of the stack.
bool states_the_same(const ResolvedDeclaration& a, const ResolvedDeclaration& b) {
  if (!a.blocks.empty() && !b.blocks.empty())
    return true;
  return std::any_of(b.properties.begin(), b.properties.end(), [&](const ResolvedProperty& property) {
    return a.find(property.row->name) != nullptr;
  });
}

/// The slug of the note about an origin.
std::string_view slug_of(Origin::Kind kind) {
  switch (kind) {
  case Origin::Kind::layer:
    return "layer-replaces";
  case Origin::Kind::sister:
    return "sister-differs";
  case Origin::Kind::command_line:
    return "set-on-command-line";
  }
  return "layer-replaces";
}

} // namespace

std::size_t Overlays::add_origin(Origin origin) {
  tree_.origins.push_back(std::move(origin));
  return tree_.origins.size() - 1;
}

void Overlays::add_let(SymbolId symbol, const Let& let, std::size_t origin) {
  overlays_.push_back({.origin = origin, .symbol = symbol, .let = &let});
}

void Overlays::add_point(SymbolId symbol, const Property& property, std::size_t origin) {
  overlays_.push_back({.origin = origin, .symbol = symbol, .point = &property});
}

void Overlays::add_declaration(ResolvedDeclaration over, std::size_t origin) {
  const SymbolId symbol = over.symbol;
  overlays_.push_back({.origin = origin, .symbol = symbol, .declaration = std::move(over)});
}

int Overlays::rank(const Overlay& overlay) const {
  if (overlay.origin == no_origin)
    return 0;
  const Origin& origin = tree_.origins[overlay.origin];
  if (origin.kind == Origin::Kind::sister)
    return 1;
  if (origin.kind == Origin::Kind::command_line)
    return 100;
  return rank_of_layer(origin.name);
}

int Overlays::rank_of_layer(std::string_view name) {
  static const KindRow* const layer = find_kind("layer");
  const auto names = layer->name_choices;
  return 2 + static_cast<int>(std::find(names.begin(), names.end(), name) - names.begin());
}

bool Overlays::left_out(const Overlay& overlay) const {
  return !as_of_.empty() && overlay.origin != no_origin &&
         tree_.origins[overlay.origin].kind == Origin::Kind::layer && rank(overlay) > rank_of_layer(as_of_);
}

void Overlays::apply() {
  record_sister();
  last_of_.clear();
  const auto before = [&](const Overlay& a, const Overlay& b) { return rank(a) < rank(b); };
  // Mostly they are: one layer states all that differs, and what it states is long.
  if (!std::is_sorted(overlays_.begin(), overlays_.end(), before))
    std::stable_sort(overlays_.begin(), overlays_.end(), before);
  for (const Overlay& overlay : overlays_)
    if (!left_out(overlay))
      apply(overlay);
  // Nor is a layer that is left out there to say when it was.
  if (!as_of_.empty())
    std::erase_if(tree_.declarations, [&](const ResolvedDeclaration& declaration) {
      return declaration.kind->category == Category::layer &&
             rank_of_layer(declaration.syntax->name.text) > rank_of_layer(as_of_);
    });
  report_origins();
}

void Overlays::apply(const Overlay& overlay) {
  if (overlay.let != nullptr)
    apply_let(overlay);
  else if (overlay.point != nullptr)
    apply_point(overlay);
  else
    apply_declaration(overlay);
}

void Overlays::record_sister() {
  for (std::size_t i = 0; i < tree_.origins.size(); ++i) {
    if (tree_.origins[i].kind != Origin::Kind::sister)
      continue;
    for (const ResolvedDeclaration& boat : tree_.declarations) {
      if (boat.kind->category != Category::boat || boat.syntax->from.missing() ||
          boat.syntax->kind.span.source != tree_.origins[i].span.source)
        continue;
      for (const ResolvedDeclaration& base : tree_.declarations) {
        if (base.kind->category != Category::boat || base.syntax->name.text != boat.syntax->from.text)
          continue;
        for (const ResolvedProperty& property : boat.properties) {
          const ResolvedProperty* was = stated(base, property.row->name);
          record(i, {.subject = "boat",
                     .property = std::string(property.row->name),
                     .was = was == nullptr ? nullptr : &was->syntax->value,
                     .is = &property.syntax->value,
                     .was_span = was == nullptr ? Span{} : was->syntax->name.span,
                     .is_span = property.syntax->name.span});
        }
      }
    }
  }
}

void Overlays::record(std::size_t origin, Override override) {
  if (origin == no_origin)
    return;
  override.origin = origin;
  tree_.overrides.push_back(std::move(override));
}

bool Overlays::measured_wins(std::size_t origin, const Value* was, const Value& is,
                             const std::string& what) {
  if (origin == no_origin || tree_.origins[origin].kind != Origin::Kind::layer)
    return false;
  if (was == nullptr || !is_measured(*was) || is_measured(is))
    return false;
  sink_.report(diagnose("measured-wins", {{"what", what}, {"layer", tree_.origins[origin].name}})
                   .at(is.span, "not taken")
                   .and_at(was->span, "measured")
                   .about(what));
  return true;
}

void Overlays::apply_let(const Overlay& overlay) {
  Symbol& symbol = tree_.symbols[overlay.symbol.index()];
  record(overlay.origin, {.subject = symbol.name,
                          .property = "value",
                          .was = &symbol.let->value,
                          .is = &overlay.let->value,
                          .was_span = symbol.let->name.span,
                          .is_span = overlay.let->name.span});
  symbol.let = overlay.let;
}

void Overlays::apply_point(const Overlay& overlay) {
  Symbol& symbol = tree_.symbols[overlay.symbol.index()];
  const Property& property = *overlay.point;
  const std::string subject = dotted(symbol.name, property.side);
  const Property** slot = property.side.missing()        ? &symbol.point
                          : property.side.text == "port" ? &symbol.port
                                                         : &symbol.starboard;
  const Property* was = *slot != nullptr ? *slot : symbol.point;
  if (measured_wins(overlay.origin, &was->value, property.value, subject))
    return;
  record(overlay.origin, {.subject = subject,
                          .property = "place",
                          .was = &was->value,
                          .is = &property.value,
                          .was_span = was->name.span,
                          .is_span = property.name.span});
  *slot = &property;
  if (!property.side.missing())
    return;
  for (const Property** side : {&symbol.port, &symbol.starboard}) {
    // A side that was measured stays as measured under a layer that says nothing of it.
    const bool layer =
        overlay.origin != no_origin && tree_.origins[overlay.origin].kind == Origin::Kind::layer;
    if (*side != nullptr && !(layer && is_measured((*side)->value)))
      *side = nullptr;
  }
}

ResolvedDeclaration* Overlays::target_of(const Overlay& overlay) {
  // The boat need not have a name: it is the last one, of which no other is made.
  const auto key = [](const KindRow* kind, SymbolId symbol) {
    return std::pair(kind, kind->category == Category::boat ? poison_symbol : symbol);
  };
  if (last_of_.empty())
    for (ResolvedDeclaration& declaration : tree_.declarations)
      last_of_[key(declaration.kind, declaration.symbol)] = &declaration;
  const auto found = last_of_.find(key(overlay.declaration.kind, overlay.symbol));
  return found == last_of_.end() ? nullptr : found->second;
}

const ResolvedProperty* Overlays::stated(const ResolvedDeclaration& declaration, std::string_view name) {
  const ResolvedDeclaration* at = &declaration;
  for (std::size_t steps = 0; at != nullptr && steps <= tree_.declarations.size(); ++steps) {
    if (const ResolvedProperty* found = at->find(name))
      return found;
    // What one side states apart is stated over what the stay states.
    const std::string& base = at->syntax->side.missing() ? at->syntax->from.text : at->syntax->name.text;
    const KindRow* kind = at->kind;
    at = nullptr;
    if (!base.empty())
      for (const ResolvedDeclaration& candidate : tree_.declarations)
        if (candidate.kind == kind && candidate.syntax->name.text == base)
          at = &candidate;
  }
  return nullptr;
}

void Overlays::apply_declaration(const Overlay& overlay) {
  ResolvedDeclaration* target = target_of(overlay);
  if (target == nullptr)
    return; // reported where the name was looked up
  const Name& side = overlay.declaration.syntax->side;
  const Symbol& symbol = tree_[overlay.symbol];
  const std::string subject = overlay.symbol == poison_symbol ? "boat" : dotted(symbol.name, side);
  if (side.missing()) {
    apply_to(*target, overlay, subject);
    // Like a point that is stated anew without a side, a stay is then so on both sides.
    for (ResolvedDeclaration& apart : target->apart)
      if (states_the_same(apart, overlay.declaration))
        apply_to(apart, overlay, dotted(symbol.name, apart.syntax->side));
    return;
  }
  for (ResolvedDeclaration& apart : target->apart) {
    if (apart.syntax->side.text != side.text)
      continue;
    if (overlay.origin == no_origin)
      sink_.report(diagnose("property-twice", {{"name", subject}})
                       .at(overlay.declaration.syntax->name.span, "stated again here")
                       .and_at(apart.syntax->name.span, "stated here first"));
    apply_to(apart, overlay, subject);
    return;
  }
  ResolvedDeclaration apart = overlay.declaration;
  apart.properties.clear();
  apart.blocks.clear();
  target->apart.push_back(std::move(apart));
  Overlay rest = overlay;
  apply_to(target->apart.back(), rest, subject);
}

void Overlays::apply_to(ResolvedDeclaration& target, const Overlay& overlay, const std::string& subject) {
  ResolvedDeclaration over = overlay.declaration;
  std::erase_if(over.properties, [&](const ResolvedProperty& property) {
    const ResolvedProperty* was = stated(target, property.row->name);
    const Value* before = was == nullptr ? nullptr : &was->syntax->value;
    if (measured_wins(overlay.origin, before, property.syntax->value,
                      std::string(property.row->name) + " of " + subject))
      return true;
    record(overlay.origin, {.subject = subject,
                            .property = std::string(property.row->name),
                            .was = before,
                            .is = &property.syntax->value,
                            .was_span = was == nullptr ? Span{} : was->syntax->name.span,
                            .is_span = property.syntax->name.span});
    return false;
  });
  for (const ResolvedDeclaration& block : over.blocks)
    record(overlay.origin, {.subject = subject,
                            .property = std::string(block.kind->name),
                            .is_span = block.syntax->kind.span,
                            .was_block = block_of(target, block.kind),
                            .is_block = block.syntax->block.span});
  lay_over(target, over);
}

void Overlays::report_origins() {
  for (std::size_t i = 0; i < tree_.origins.size(); ++i) {
    const Origin& origin = tree_.origins[i];
    std::size_t count = 0;
    std::string names;
    std::vector<std::pair<Span, std::string>> places;
    for (const Override& override : tree_.overrides) {
      if (override.origin != i)
        continue;
      if (++count > most_origins)
        continue;
      const std::string name = override.subject + " " + override.property;
      names += (names.empty() ? "" : ", ") + name;
      places.emplace_back(override.is_span, name);
    }
    if (count == 0)
      continue;
    if (count > most_origins)
      names += ", …";
    auto builder = diagnose(slug_of(origin.kind), {{"name", origin.name},
                                                   {"count", std::to_string(count)},
                                                   {"values", count == 1 ? "value" : "values"},
                                                   {"names", names}})
                       .at(origin.kind == Origin::Kind::command_line ? places.front().first : origin.span);
    const bool first_is_place = origin.kind == Origin::Kind::command_line;
    for (auto& [span, name] : places)
      if (!first_is_place || span != places.front().first)
        builder = std::move(builder).and_at(span, name);
    sink_.report(std::move(builder));
  }
}

} // namespace sheerpole
