#include "driver/editor/lsp_json.hpp"

#include "driver/editor/file_uri.hpp"

#include <algorithm>
#include <map>
#include <memory>
#include <utility>

namespace sheerpole::editor {

namespace {

using service::OutlineSort;
using service::ProposalSort;
using service::TextPlace;

/// DiagnosticSeverity.
int severity_number(const Diagnostic& finding) {
  if (!finding.waived.empty())
    return 4;
  switch (finding.severity) {
  case Severity::error:
    return 1;
  case Severity::warning:
    return 2;
  case Severity::note:
    return 3;
  }
  return 3;
}

/// CompletionItemKind.
int item_kind(ProposalSort sort) {
  switch (sort) {
  case ProposalSort::keyword:
    return 14;
  case ProposalSort::kind:
    return 7;
  case ProposalSort::property:
    return 10;
  case ProposalSort::block:
    return 9;
  case ProposalSort::name:
    return 6;
  case ProposalSort::choice:
    return 20;
  case ProposalSort::end:
    return 22;
  case ProposalSort::unit:
    return 11;
  case ProposalSort::source:
    return 12;
  case ProposalSort::file:
    return 17;
  }
  return 1;
}

/// SymbolKind.
int symbol_kind(OutlineSort sort) {
  switch (sort) {
  case OutlineSort::file:
    return 1;
  case OutlineSort::let:
    return 13;
  case OutlineSort::declaration:
    return 5;
  case OutlineSort::block:
    return 19;
  case OutlineSort::point:
    return 8;
  case OutlineSort::expectation:
    return 17;
  }
  return 13;
}

Json markup(const std::string& marked, const std::string& plain, const ClientWays& ways) {
  return {{"kind", ways.markdown ? "markdown" : "plaintext"}, {"value", ways.markdown ? marked : plain}};
}

std::string words_of(const Diagnostic& finding) {
  std::string words = finding.message;
  if (!finding.why.empty())
    words += "\n" + finding.why;
  if (!finding.waived.empty())
    words += "\n" + finding.waived;
  return words;
}

/// Four digits, so that a client which sorts by them keeps our order.
std::string sort_text(std::size_t number, bool first) {
  const std::string digits = std::to_string(std::min<std::size_t>(number, 9999));
  return (first ? "0" : "1") + std::string(4 - digits.size(), '0') + digits;
}

void add_flat(const std::vector<service::OutlineItem>& items, const PlacedText& text,
              const std::string& uri, const std::string& container, Json& result) {
  for (const service::OutlineItem& item : items) {
    Json each = {{"name", item.name},
                 {"kind", symbol_kind(item.sort)},
                 {"location", {{"uri", uri}, {"range", text.range(item.span)}}}};
    if (!container.empty())
      each["containerName"] = container;
    result.push_back(std::move(each));
    add_flat(item.inside, text, uri, item.name, result);
  }
}

} // namespace

Json PlacedText::position(const TextPlace& place) const {
  return {{"line", place.line}, {"character", boat_.places(source_).character(place, ways_.counted)}};
}

Json PlacedText::range(Span span) const {
  const service::TextRange range = boat_.range(span);
  return {{"start", position(range.begin)}, {"end", position(range.end)}};
}

Json PlacedText::range(std::uint32_t begin, std::uint32_t end) const {
  const service::TextPlaces& places = boat_.places(source_);
  return {{"start", position(places.at_byte(begin))}, {"end", position(places.at_byte(end))}};
}

std::uint32_t PlacedText::offset(const Json& position) const {
  const auto number = [&](const char* key) {
    const Json& value = position.at(key);
    if (value.is_number_unsigned())
      return value.get<std::size_t>();
    return value.get<long long>() < 0 ? std::size_t{0} : value.get<std::size_t>();
  };
  return service::offset_of(
      text(), boat_.places(source_).at_line(number("line"), number("character"), ways_.counted).byte);
}

Json location_json(const service::OpenBoat& boat, Span span, const ClientWays& ways) {
  const PlacedText text(boat, span.source, ways);
  return {{"uri", uri_of_path(text.text().name())}, {"range", text.range(span)}};
}

Json diagnostic_json(const service::OpenBoat& boat, const Diagnostic& finding, const ClientWays& ways) {
  Json json;
  if (finding.primary)
    json["range"] = PlacedText(boat, finding.primary->span.source, ways).range(finding.primary->span);
  else
    json["range"] = {{"start", {{"line", 0}, {"character", 0}}}, {"end", {{"line", 0}, {"character", 0}}}};
  json["severity"] = severity_number(finding);
  json["code"] = finding.slug;
  json["source"] = "sheerpole";
  json["message"] = words_of(finding);
  if (ways.related) {
    Json related = Json::array();
    for (const Label& other : finding.others)
      if (boat.tree(other.span.source) != nullptr)
        related.push_back({{"location", location_json(boat, other.span, ways)}, {"message", other.text}});
    if (!related.empty())
      json["relatedInformation"] = std::move(related);
  }
  return json;
}

Json diagnostics_json(const service::OpenBoat& boat, const service::FileFindings& findings,
                      const ClientWays& ways) {
  Json result = Json::array();
  for (const Diagnostic* finding : findings.findings)
    result.push_back(diagnostic_json(boat, *finding, ways));
  return result;
}

Json completion_json(const service::Proposals& proposals, const PlacedText& text, const ClientWays& ways) {
  Json items = Json::array();
  for (const service::Proposal& proposal : proposals.all) {
    const bool snippet = ways.snippets && !proposal.snippet.empty();
    Json item = {{"label", proposal.word}, {"kind", item_kind(proposal.sort)}};
    if (!proposal.detail.empty())
      item["detail"] = proposal.detail;
    if (!proposal.help.empty())
      item["documentation"] = proposal.help;
    item["sortText"] = sort_text(items.size(), proposal.preselect);
    item["filterText"] = proposal.word;
    item["insertTextFormat"] = snippet ? 2 : 1;
    item["textEdit"] = {{"range", text.range(proposals.span)},
                        {"newText", snippet ? proposal.snippet : proposal.insert}};
    items.push_back(std::move(item));
  }
  return {{"isIncomplete", false}, {"items", std::move(items)}};
}

Json hover_json(const service::Hover& hover, const PlacedText& text, const ClientWays& ways) {
  return {{"contents", markup(service::markdown(hover), service::plain_text_of(hover), ways)},
          {"range", text.range(hover.span)}};
}

Json outline_json(const std::vector<service::OutlineItem>& items, const PlacedText& text,
                  const std::string& uri, const ClientWays& ways) {
  Json result = Json::array();
  if (!ways.nested_outline) {
    add_flat(items, text, uri, {}, result);
    return result;
  }
  for (const service::OutlineItem& item : items) {
    Json each = {{"name", item.name.empty() ? std::string("?") : item.name}};
    if (!item.detail.empty())
      each["detail"] = item.detail;
    each["kind"] = symbol_kind(item.sort);
    each["range"] = text.range(item.span);
    each["selectionRange"] = text.range(item.name_span);
    if (!item.inside.empty())
      each["children"] = outline_json(item.inside, text, uri, ways);
    result.push_back(std::move(each));
  }
  return result;
}

Json folds_json(const std::vector<service::Fold>& folds) {
  Json result = Json::array();
  for (const service::Fold& fold : folds) {
    Json each = {{"startLine", fold.first}, {"endLine", fold.last}};
    if (fold.sort == service::Fold::Sort::comment)
      each["kind"] = "comment";
    else if (fold.sort == service::Fold::Sort::uses)
      each["kind"] = "imports";
    else
      each["kind"] = "region";
    result.push_back(std::move(each));
  }
  return result;
}

Json tokens_json(const std::vector<service::Token>& tokens, const PlacedText& text) {
  Json data = Json::array();
  std::uint32_t line = 0;
  std::uint32_t character = 0;
  for (const service::Token& token : tokens) {
    const Json range = text.range(token.span);
    const auto begin_line = range["start"]["line"].get<std::uint32_t>();
    const auto begin = range["start"]["character"].get<std::uint32_t>();
    const auto end = range["end"]["character"].get<std::uint32_t>();
    if (range["end"]["line"].get<std::uint32_t>() != begin_line || end <= begin)
      continue;
    data.push_back(begin_line - line);
    data.push_back(begin_line == line ? begin - character : begin);
    data.push_back(end - begin);
    data.push_back(static_cast<int>(token.sort));
    data.push_back(token.declared_here ? 1 : 0);
    line = begin_line;
    character = begin;
  }
  return {{"data", std::move(data)}};
}

Json token_legend() {
  Json types = Json::array();
  for (int i = 0; i < service::token_sorts; ++i)
    types.push_back(service::lsp_name(static_cast<service::TokenSort>(i)));
  return {{"tokenTypes", std::move(types)}, {"tokenModifiers", Json::array({"declaration"})}};
}

Json text_edits(const std::vector<service::TextEdit>& edits, const PlacedText& text) {
  Json result = Json::array();
  for (const service::TextEdit& edit : edits)
    if (edit.file == text.text().name())
      result.push_back({{"range", text.range(edit.begin, edit.end)}, {"newText", edit.replacement}});
  return result;
}

Json workspace_edit(const service::OpenBoat& boat, const std::vector<service::TextEdit>& edits,
                    const ClientWays& ways) {
  Json changes = Json::object();
  for (std::uint32_t i = 0; i < boat.compiled.sources->size(); ++i) {
    const PlacedText text(boat, SourceId{i}, ways);
    if (Json of_file = text_edits(edits, text); !of_file.empty())
      changes[uri_of_path(text.text().name())] = std::move(of_file);
  }
  return {{"changes", std::move(changes)}};
}

} // namespace sheerpole::editor
