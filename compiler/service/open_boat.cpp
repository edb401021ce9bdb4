#include "service/open_boat.hpp"

#include "diagnostics/sink.hpp"
#include "names/resolve.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole::service {

std::optional<SourceId> OpenBoat::source(std::string_view path) const {
  for (std::uint32_t i = 0; i < compiled.sources->size(); ++i)
    if ((*compiled.sources)[SourceId{i}].name() == path)
      return SourceId{i};
  return std::nullopt;
}

const SyntaxTree* OpenBoat::tree(SourceId source) const {
  for (const auto& each : compiled.trees)
    if (each->source == source)
      return each.get();
  return nullptr;
}

OpenBoat read_boat(const std::string& root, FileReader& reader, const CompileOptions& options) {
  OpenBoat boat{root, compile(root, reader, options)};
  if (!boat.compiled.names && !boat.compiled.trees.empty()) {
    DiagnosticSink not_said;
    boat.loose = resolve(boat.compiled.trees, not_said);
  }
  return boat;
}

TextRange range_of(const SourceText& text, const TextPlaces& places, Span span) {
  const std::uint32_t mark = bytes_of_mark(text);
  return {places.at_byte(span.begin + mark), places.at_byte(std::max(span.begin, span.end) + mark)};
}

std::uint32_t offset_of(const SourceText& text, std::uint32_t byte) {
  const std::uint32_t mark = bytes_of_mark(text);
  return byte > mark ? byte - mark : 0;
}

TextEdit edit_of(const SourceText& text, Span span, std::string replacement) {
  const std::uint32_t mark = bytes_of_mark(text);
  return {text.name(), span.begin + mark, std::max(span.begin, span.end) + mark, std::move(replacement)};
}

} // namespace sheerpole::service
