#pragma once

#include "service/complete.hpp"
#include "service/findings.hpp"
#include "service/hover.hpp"
#include "service/open_boat.hpp"
#include "service/outline.hpp"
#include "service/tokens.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

// What the service says in the words of the Language Server Protocol 3.17.
namespace sheerpole::editor {

using Json = nlohmann::ordered_json;

/// Which places the client and we have agreed on, and what it can show.
struct ClientWays {
  service::Counted counted = service::Counted::utf16;
  bool snippets = false;
  bool markdown = false;
  bool related = false; ///< second places of a finding
  bool nested_outline = false;
  bool watches_files = false; ///< and tells what has changed on the disk, when it is asked to
};

/// A file of a boat, in the places of the client.
class PlacedText {
public:
  PlacedText(const service::OpenBoat& boat, SourceId source, const ClientWays& ways)
      : boat_(boat), source_(source), ways_(ways) {}

  Json position(const service::TextPlace& place) const;
  Json range(Span span) const;
  Json range(std::uint32_t begin, std::uint32_t end) const;
  /// The byte that a position of the client names, as the compiler counts.
  std::uint32_t offset(const Json& position) const;
  const SourceText& text() const { return boat_.text(source_); }

private:
  const service::OpenBoat& boat_;
  SourceId source_;
  const ClientWays& ways_;
};

Json diagnostics_json(const service::OpenBoat& boat, const service::FileFindings& findings,
                      const ClientWays& ways);
Json diagnostic_json(const service::OpenBoat& boat, const Diagnostic& finding, const ClientWays& ways);
Json location_json(const service::OpenBoat& boat, Span span, const ClientWays& ways);
Json completion_json(const service::Proposals& proposals, const PlacedText& text, const ClientWays& ways);
Json hover_json(const service::Hover& hover, const PlacedText& text, const ClientWays& ways);
/// Nested, or as a list for those that know no other.
Json outline_json(const std::vector<service::OutlineItem>& items, const PlacedText& text,
                  const std::string& uri, const ClientWays& ways);
Json folds_json(const std::vector<service::Fold>& folds);
Json tokens_json(const std::vector<service::Token>& tokens, const PlacedText& text);
Json token_legend();
/// A WorkspaceEdit: by URI, the edits in the order of their places.
Json workspace_edit(const service::OpenBoat& boat, const std::vector<service::TextEdit>& edits,
                    const ClientWays& ways);
Json text_edits(const std::vector<service::TextEdit>& edits, const PlacedText& text);

} // namespace sheerpole::editor
