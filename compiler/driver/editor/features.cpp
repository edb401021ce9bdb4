// What an editor asks of a document.

#include "driver/editor/file_uri.hpp"
#include "driver/editor/language_server.hpp"
#include "service/cursor.hpp"
#include "service/inlay.hpp"
#include "service/occurrences.hpp"
#include "service/rename.hpp"

#include <algorithm>
#include <map>
#include <stdexcept>

namespace sheerpole::editor {

namespace {

/// Places of several boats: each once, in the order in which they were met.
void add_location(Json& locations, Json location) {
  if (std::find(locations.begin(), locations.end(), location) == locations.end())
    locations.push_back(std::move(location));
}

/// Edits of one boat more, by URI.
void add_edits(Json& changes, const Json& more) {
  for (const auto& [uri, edits] : more.items()) {
    Json& here = changes[uri];
    for (const Json& edit : edits)
      add_location(here, edit);
  }
}

} // namespace

std::optional<LanguageServer::Asked> LanguageServer::asked(const Json& params) {
  const std::string path = path_of_uri(params.at("textDocument").at("uri").get<std::string>());
  const service::OpenBoat* boat = workspace_.boat_of(path);
  if (boat == nullptr)
    return std::nullopt;
  const auto source = boat->source(path);
  if (!source)
    return std::nullopt;
  return Asked{boat, *source};
}

Json LanguageServer::completion(const Json& params) {
  const auto at = asked(params);
  if (!at)
    return nullptr;
  const PlacedText text(*at->boat, at->source, ways_);
  return completion_json(service::complete(*at->boat, at->source, text.offset(params.at("position"))), text,
                         ways_);
}

Json LanguageServer::hover(const Json& params) {
  const auto at = asked(params);
  if (!at)
    return nullptr;
  const PlacedText text(*at->boat, at->source, ways_);
  const auto found = service::hover(*at->boat, at->source, text.offset(params.at("position")));
  return found ? hover_json(*found, text, ways_) : Json();
}

Json LanguageServer::definition(const Json& params) {
  const auto at = asked(params);
  if (!at)
    return nullptr;
  const PlacedText text(*at->boat, at->source, ways_);
  const auto found = service::definition(*at->boat, at->source, text.offset(params.at("position")));
  if (!found || at->boat->tree(found->to.source) == nullptr)
    return nullptr;
  return location_json(*at->boat, found->to, ways_);
}

Json LanguageServer::references(const Json& params) {
  const auto at = asked(params);
  if (!at)
    return nullptr;
  const std::string path = at->boat->text(at->source).name();
  const std::uint32_t offset = PlacedText(*at->boat, at->source, ways_).offset(params.at("position"));
  const bool declared = params.at("context").at("includeDeclaration").get<bool>();
  Json result = Json::array();
  for (const service::OpenBoat* boat : workspace_.all_boats_of(path))
    for (const Span place : service::references(*boat, *boat->source(path), offset, declared))
      add_location(result, location_json(*boat, place, ways_));
  return result;
}

Json LanguageServer::prepare_rename(const Json& params) {
  const auto at = asked(params);
  if (!at)
    return nullptr;
  const PlacedText text(*at->boat, at->source, ways_);
  const auto found = service::renamable(*at->boat, at->source, text.offset(params.at("position")));
  if (!found)
    return nullptr;
  return {{"range", text.range(found->span)}, {"placeholder", found->name}};
}

Json LanguageServer::rename(const Json& params) {
  const auto at = asked(params);
  if (!at)
    throw std::invalid_argument("the document is not open");
  const std::string path = at->boat->text(at->source).name();
  const std::uint32_t offset = PlacedText(*at->boat, at->source, ways_).offset(params.at("position"));
  const auto new_name = params.at("newName").get<std::string>();
  Json changes = Json::object();
  for (const service::OpenBoat* boat : workspace_.all_boats_of(path)) {
    const service::Renaming renaming = service::rename(*boat, workspace_.reader(), workspace_.options(),
                                                       *boat->source(path), offset, new_name);
    if (!renaming.refused.empty())
      throw std::invalid_argument(renaming.refused);
    add_edits(changes, workspace_edit(*boat, renaming.edits, ways_)["changes"]);
  }
  return {{"changes", std::move(changes)}};
}

Json LanguageServer::formatting(const Json& params) {
  const auto at = asked(params);
  if (!at)
    return nullptr;
  const auto edits = service::format(at->boat->text(at->source));
  return edits ? text_edits(*edits, PlacedText(*at->boat, at->source, ways_)) : Json();
}

Json LanguageServer::document_symbol(const Json& params) {
  const auto at = asked(params);
  if (!at)
    return nullptr;
  const PlacedText text(*at->boat, at->source, ways_);
  return outline_json(service::outline(*at->boat, at->source), text, uri_of(text.text().name()), ways_);
}

Json LanguageServer::folding_range(const Json& params) {
  const auto at = asked(params);
  return at ? folds_json(service::folds(at->boat->text(at->source))) : Json();
}

Json LanguageServer::inlay_hint(const Json& params) {
  const auto at = asked(params);
  if (!at)
    return nullptr;
  const PlacedText text(*at->boat, at->source, ways_);
  const std::uint32_t begin = text.offset(params.at("range").at("start"));
  const std::uint32_t end = text.offset(params.at("range").at("end"));
  Json result = Json::array();
  for (const service::Inlay& inlay : service::inlays(*at->boat, at->source))
    if (inlay.behind.end >= begin && inlay.behind.end <= end)
      result.push_back(
          {{"position", text.range(inlay.behind)["end"]}, {"label", inlay.words}, {"paddingLeft", true}});
  return result;
}

Json LanguageServer::code_action(const Json& params) {
  const auto at = asked(params);
  if (!at)
    return nullptr;
  const PlacedText text(*at->boat, at->source, ways_);
  const Span span{at->source, text.offset(params.at("range").at("start")),
                  text.offset(params.at("range").at("end"))};
  const Json only = params.contains("context") ? params["context"].value("only", Json()) : Json();
  const auto wanted = [&](const std::string& kind) {
    return !only.is_array() || std::any_of(only.begin(), only.end(), [&](const Json& each) {
      return each.is_string() && (kind == each || kind.starts_with(each.get<std::string>() + "."));
    });
  };
  Json result = Json::array();
  const auto add = [&](const service::Action& action, const char* kind) {
    Json json = {{"title", action.title}, {"kind", kind}};
    if (action.finding != nullptr) {
      json["diagnostics"] = Json::array({diagnostic_json(*at->boat, *action.finding, ways_)});
      json["isPreferred"] = action.certain;
    }
    json["edit"] = workspace_edit(*at->boat, action.edits, ways_);
    result.push_back(std::move(json));
  };
  if (wanted("quickfix"))
    for (const service::Action& action : service::actions(*at->boat, span))
      add(action, "quickfix");
  if (wanted("source.fixAll"))
    for (const service::Action& action : service::mend_all(*at->boat, workspace_.reader()))
      add(action, "source.fixAll");
  return result;
}

Json LanguageServer::semantic_tokens(const Json& params) {
  const auto at = asked(params);
  if (!at)
    return nullptr;
  const PlacedText text(*at->boat, at->source, ways_);
  return tokens_json(service::tokens(*at->boat, at->source), text);
}

Json LanguageServer::ask_service(const Json& params) {
  if (!answers_) {
    backends_ = built_in_backends();
    answers_.emplace(workspace_.reader(), backends_);
  }
  return answers_->answer(params);
}

} // namespace sheerpole::editor
