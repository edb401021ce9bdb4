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

const TextPlaces& OpenBoat::places(SourceId source) const {
  std::shared_ptr<const PlacedBytes>& here = placed[source];
  if (!here)
    here = std::make_shared<const PlacedBytes>(text(source).file_bytes());
  return here->places;
}

TextRange OpenBoat::range(Span span) const {
  const std::uint32_t mark = bytes_of_mark(text(span.source));
  const TextPlaces& lines = places(span.source);
  return {lines.at_byte(span.begin + mark), lines.at_byte(std::max(span.begin, span.end) + mark)};
}

OpenBoat read_boat(const std::string& root, FileReader& reader, const CompileOptions& options) {
  OpenBoat boat{root, compile(root, reader, options)};
  if (!boat.compiled.names && !boat.compiled.trees.empty()) {
    DiagnosticSink not_said;
    boat.loose = resolve(boat.compiled.trees, not_said);
  }
  return boat;
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
