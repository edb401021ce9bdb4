#include "names/symbol_table.hpp"

#include "base/edit_distance.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

constexpr std::size_t most_places = 4; ///< shown of a name that is used often

/// Comparing two names takes as many steps as the product of their lengths. This many steps are a fraction
/// of a second, and enough for a hundred slips in a large boat; whoever has more looks for them without
/// help.
constexpr std::size_t most_comparing = 5'000'000;

/// Longest name in which a minus without blanks is looked for.
constexpr std::size_t longest_sum_as_name = 200;

std::string_view describe_symbol(const Symbol& symbol) {
  switch (symbol.kind) {
  case Symbol::Kind::let:
    return "a named value";
  case Symbol::Kind::point:
    return "a point";
  default:
    return describe(symbol.category);
  }
}

} // namespace

SymbolTable::SymbolTable(ResolvedTree& tree, DiagnosticSink& sink)
    : tree_(tree), sink_(sink), comparing_left_(most_comparing) {}

SymbolId SymbolTable::declare(Symbol symbol) {
  SymbolId id{static_cast<std::uint32_t>(tree_.symbols.size())};
  const auto [place, fresh] = by_name_.emplace(symbol.name, id);
  if (!fresh) {
    const Symbol& first = tree_[place->second];
    sink_.report(diagnose("duplicate-name", {{"name", symbol.name},
                                             {"kind", std::string(describe_symbol(symbol))},
                                             {"first", std::string(describe_symbol(first))}})
                     .at(symbol.span, "declared again here")
                     .and_at(first.span, "declared here first"));
    // The second one stays in the list, so that its own content is still checked.
  }
  bind(symbol.span, id);
  tree_.symbols.push_back(std::move(symbol));
  return id;
}

const Symbol* SymbolTable::lookup(const std::string& name, SymbolId& id) const {
  const auto found = by_name_.find(name);
  if (found == by_name_.end())
    return nullptr;
  id = found->second;
  return &tree_[id];
}

template <class Fits>
std::optional<std::string> SymbolTable::nearest(const std::string& name, const Fits& fits) {
  std::vector<std::string> candidates;
  const std::size_t steps = name.size() * name.size() + 1;
  for (const Symbol& candidate : tree_.symbols) {
    if (candidate.poison() || !fits(candidate))
      continue;
    if (comparing_left_ < steps)
      return std::nullopt;
    comparing_left_ -= steps;
    candidates.push_back(candidate.name);
  }
  return nearest_name(name, candidates);
}

template <class Fits>
void SymbolTable::add_unknown(const Name& name, std::string_view wanted, const Fits& fits) {
  if (unknown_.size() > DiagnosticSink::most_errors)
    return; // not shown anyway
  // One thing that is not declared is one cause, however often it is used.
  const auto [known, fresh] = unknown_names_.emplace(name.text, unknown_.size());
  if (!fresh) {
    Diagnostic& earlier = unknown_[known->second];
    if (earlier.others.size() < most_places)
      earlier.others.push_back({name.span, "used here too"});
    return;
  }
  auto builder =
      diagnose("unknown-name", {{"name", name.text}, {"wanted", std::string(wanted)}}).at(name.span);
  if (const auto near = nearest(name.text, fits)) {
    SymbolId id;
    const Symbol* symbol = lookup(*near, id);
    builder = std::move(builder).edit(name.span, *near, "write `" + *near + "`");
    if (symbol != nullptr)
      builder = std::move(builder).and_at(symbol->span, "`" + *near + "` is declared here");
  }
  unknown_.push_back(std::move(builder).build());
}

void SymbolTable::report_unknown_names() {
  for (Diagnostic& finding : unknown_)
    sink_.report(std::move(finding));
  unknown_.clear();
  unknown_names_.clear();
}

bool SymbolTable::report_unspaced_minus(const Name& name) {
  if (name.text.size() > longest_sum_as_name)
    return false;
  for (std::size_t at = name.text.find('-'); at != std::string::npos; at = name.text.find('-', at + 1)) {
    const std::string left = name.text.substr(0, at);
    const std::string right = name.text.substr(at + 1);
    if (by_name_.count(left) == 0 || by_name_.count(right) == 0)
      continue;
    sink_.report(diagnose("minus-needs-blanks", {{"name", name.text}, {"left", left}, {"right", right}})
                     .at(name.span)
                     .edit(name.span, left + " - " + right, "write `" + left + " - " + right + "`"));
    return true;
  }
  return false;
}

SymbolId SymbolTable::find(const Name& name, Span whole, const std::vector<Category>& wanted) {
  if (name.missing())
    return poison_symbol;
  SymbolId id;
  const Symbol* symbol = lookup(name.text, id);
  const auto fits = [&](const Symbol& candidate) {
    const Category category = candidate.kind == Symbol::Kind::point ? Category::point : candidate.category;
    return candidate.kind != Symbol::Kind::let &&
           std::find(wanted.begin(), wanted.end(), category) != wanted.end();
  };
  if (symbol != nullptr && symbol->poison())
    return bind(whole, poison_symbol); // what it is could not be read; reported there
  if (symbol != nullptr && fits(*symbol))
    return bind(whole, id);
  const std::string_view what = describe(wanted.front());
  if (symbol != nullptr) {
    sink_.report(diagnose("wrong-kind-of-name", {{"name", name.text},
                                                 {"is", std::string(describe_symbol(*symbol))},
                                                 {"wanted", std::string(what)}})
                     .at(name.span)
                     .and_at(symbol->span, "declared here"));
    return bind(whole, poison_symbol);
  }
  add_unknown(name, what, fits);
  return bind(whole, poison_symbol);
}

SymbolId SymbolTable::find_value(const Name& name, Span whole) {
  if (name.missing())
    return poison_symbol;
  SymbolId id;
  const Symbol* symbol = lookup(name.text, id);
  if (symbol != nullptr && symbol->poison())
    return bind(whole, poison_symbol);
  if (symbol != nullptr && (symbol->kind == Symbol::Kind::let || symbol->kind == Symbol::Kind::point))
    return bind(whole, id);
  constexpr std::string_view wanted = "a named value (`let`) or a point";
  if (symbol != nullptr) {
    sink_.report(diagnose("wrong-kind-of-name", {{"name", name.text},
                                                 {"is", std::string(describe_symbol(*symbol))},
                                                 {"wanted", std::string(wanted)}})
                     .at(name.span)
                     .and_at(symbol->span, "declared here"));
    return bind(whole, poison_symbol);
  }
  if (report_unspaced_minus(name))
    return bind(whole, poison_symbol);
  add_unknown(name, wanted, [](const Symbol& candidate) {
    return candidate.kind == Symbol::Kind::let || candidate.kind == Symbol::Kind::point;
  });
  return bind(whole, poison_symbol);
}

std::string listed(const std::vector<std::string>& names) {
  std::string result;
  for (const std::string& name : names) {
    result += result.empty() ? "" : ", ";
    result += name;
  }
  return result.empty() ? "nothing" : result;
}

DiagnosticBuilder with_nearest(DiagnosticBuilder builder, std::string_view written, Span span,
                               const std::vector<std::string>& candidates) {
  if (const auto near = nearest_name(written, candidates))
    return std::move(builder).edit(span, *near, "write `" + *near + "`");
  return builder;
}

} // namespace sheerpole
