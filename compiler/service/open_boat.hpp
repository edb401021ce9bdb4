#pragma once

#include "service/compile.hpp"
#include "service/text_places.hpp"
#include "service/texts.hpp"

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace sheerpole::service {

/// A boat as it is understood now, from the file that was asked for.
struct OpenBoat {
  std::string root; ///< the path of that file
  Compilation compiled;
  /// The names of texts that have slips: what could be bound, without a finding. `compiled` has those of
  /// texts that have none.
  std::optional<ResolvedTree> loose = {};

  /// Null when not even the file that was asked for could be read.
  const ResolvedTree* names() const {
    return compiled.names ? &*compiled.names : loose ? &*loose : nullptr;
  }
  const SourceText& text(SourceId source) const { return (*compiled.sources)[source]; }
  /// The file of this path, when it is one of the boat's.
  std::optional<SourceId> source(std::string_view path) const;
  /// Its tree; null when it was not read.
  const SyntaxTree* tree(SourceId source) const;
  /// The lines of a file, its byte order mark counted. Worked out when they are first asked for.
  const TextPlaces& places(SourceId source) const;
  /// A place of the compiler, as editors count it.
  TextRange range(Span span) const;

  /// A file as it lies on the disk, and its lines.
  struct PlacedBytes {
    explicit PlacedBytes(std::string all) : bytes(std::move(all)), places(bytes) {}
    PlacedBytes(const PlacedBytes&) = delete;
    PlacedBytes& operator=(const PlacedBytes&) = delete;
    std::string bytes;
    TextPlaces places;
  };
  mutable std::map<SourceId, std::shared_ptr<const PlacedBytes>> placed = {}; ///< by places() alone
};

/// Takes the boat through the phases. Names are bound however many slips the texts have, for whoever is
/// typing.
OpenBoat read_boat(const std::string& root, FileReader& reader, const CompileOptions& options = {});

/// The other way round: a byte of a file, with its mark counted, as the compiler counts.
std::uint32_t offset_of(const SourceText& text, std::uint32_t byte);
/// An edit of the compiler's.
TextEdit edit_of(const SourceText& text, Span span, std::string replacement);

} // namespace sheerpole::service
