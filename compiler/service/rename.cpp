#include "service/rename.hpp"

#include "diagnostics/sink.hpp"
#include "service/cursor.hpp"
#include "service/occurrences.hpp"
#include "syntax/parse.hpp"
#include "wording/service_words.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole::service {

namespace {

/// Whether the language takes the word as a name, and as nothing else.
bool is_name(const std::string& word) {
  DiagnosticSink sink;
  const SourceText text(SourceId{0}, "", "language 1\nlet " + word + " = 1\n");
  const SyntaxTree tree = parse(text, sink);
  if (!sink.all().empty() || tree.statements.size() != 2)
    return false;
  const auto* let = std::get_if<Let>(&tree.statements[1]);
  return let != nullptr && let->name.text == word;
}

std::size_t count_errors(const OpenBoat& boat) {
  return static_cast<std::size_t>(
      std::count_if(boat.compiled.findings.begin(), boat.compiled.findings.end(),
                    [](const Diagnostic& finding) { return finding.severity == Severity::error; }));
}

/// Reads the renamed texts and looks whether all places stand for one thing, that of the new name, and
/// whether no error has come of it.
bool holds(const OpenBoat& boat, FileReader& reader, const CompileOptions& options,
           const std::vector<TextEdit>& edits, const std::string& new_name) {
  Texts renamed(&reader);
  for (std::uint32_t i = 0; i < boat.compiled.sources->size(); ++i) {
    const SourceText& text = boat.text(SourceId{i});
    if (std::any_of(edits.begin(), edits.end(),
                    [&](const TextEdit& edit) { return edit.file == text.name(); }))
      renamed.put(text.name(), with_edits(text.name(), text.file_bytes(), edits));
  }
  CompileOptions again = options;
  again.kept = nullptr;
  const OpenBoat after = read_boat(boat.root, renamed, again);
  if (after.names() == nullptr || count_errors(after) > count_errors(boat))
    return false;
  SymbolId id = poison_symbol;
  for (std::uint32_t i = 1; i < after.names()->symbols.size(); ++i)
    if ((*after.names())[SymbolId{i}].name == new_name)
      id = SymbolId{i};
  return id != poison_symbol && places_of(after, id).size() == edits.size();
}

} // namespace

std::optional<Renamable> renamable(const OpenBoat& boat, SourceId source, std::uint32_t offset) {
  const SymbolId id = symbol_of(boat, source, offset);
  if (id == poison_symbol)
    return std::nullopt;
  const Span word = word_at(boat.text(source), offset);
  return Renamable{word, std::string(boat.text(source).text(word))};
}

Renaming rename(const OpenBoat& boat, FileReader& reader, const CompileOptions& options, SourceId source,
                std::uint32_t offset, const std::string& new_name) {
  const SymbolId id = symbol_of(boat, source, offset);
  if (id == poison_symbol)
    return {{}, nothing_to_rename()};
  if (!is_name(new_name))
    return {{}, no_name_of_the_language(new_name)};
  if ((*boat.names())[id].name == new_name)
    return {};
  if (find_symbol(boat.names(), new_name) != nullptr)
    return {{}, name_is_taken(new_name)};
  Renaming result;
  for (const Span place : places_of(boat, id))
    result.edits.push_back(edit_of(boat.text(place.source), place, new_name));
  if (!holds(boat, reader, options, result.edits, new_name))
    return {{}, would_mean_something_else(new_name)};
  return result;
}

} // namespace sheerpole::service
