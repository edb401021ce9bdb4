#include "service/occurrences.hpp"

#include "service/cursor.hpp"

#include <filesystem>

namespace sheerpole::service {

namespace {

/// The file that the `use` around the offset reads.
std::optional<Definition> used_file(const OpenBoat& boat, SourceId source, std::uint32_t offset) {
  const SyntaxTree* tree = boat.tree(source);
  if (tree == nullptr)
    return std::nullopt;
  for (const Statement& statement : tree->statements) {
    const auto* use = std::get_if<Use>(&statement);
    if (use == nullptr || offset < use->path.span.begin || offset > use->path.span.end)
      continue;
    const std::filesystem::path from(boat.text(source).name());
    const std::string path = (from.parent_path() / use->path.text).lexically_normal().generic_string();
    if (const auto used = boat.source(path))
      return Definition{use->path.span, {*used, 0, 0}};
  }
  return std::nullopt;
}

} // namespace

SymbolId symbol_of(const OpenBoat& boat, SourceId source, std::uint32_t offset) {
  const Span word = word_at(boat.text(source), offset);
  const ResolvedTree* names = boat.names();
  return names == nullptr || word.begin == word.end ? poison_symbol : names->symbol_at(word);
}

std::optional<Definition> definition(const OpenBoat& boat, SourceId source, std::uint32_t offset) {
  const SymbolId id = symbol_of(boat, source, offset);
  if (id == poison_symbol)
    return used_file(boat, source, offset);
  return Definition{word_at(boat.text(source), offset), (*boat.names())[id].span};
}

std::vector<Span> places_of(const OpenBoat& boat, SymbolId symbol) {
  std::vector<Span> result;
  for (const NameUse& use : boat.names()->sorted_uses()) {
    // What the command line sets is in no file.
    if (use.symbol != symbol || boat.tree(use.source) == nullptr)
      continue;
    const Span word = word_at(boat.text(use.source), use.offset);
    if (word.begin == use.offset)
      result.push_back(word);
  }
  return result;
}

std::vector<Span> references(const OpenBoat& boat, SourceId source, std::uint32_t offset,
                             bool with_declaration) {
  const SymbolId id = symbol_of(boat, source, offset);
  if (id == poison_symbol)
    return {};
  std::vector<Span> result = places_of(boat, id);
  if (!with_declaration) {
    const Span declared = (*boat.names())[id].span;
    std::erase_if(result, [&](Span place) {
      return place.source == declared.source && place.begin == declared.begin;
    });
  }
  return result;
}

} // namespace sheerpole::service
