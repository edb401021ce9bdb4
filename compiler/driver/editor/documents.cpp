// What an editor says of its documents and folders.

#include "driver/editor/file_uri.hpp"
#include "driver/editor/language_server.hpp"

#include <algorithm>
#include <stdexcept>

namespace sheerpole::editor {

namespace {

std::string path_in(const Json& params) {
  return path_of_uri(params.at("textDocument").at("uri").get<std::string>());
}

std::size_t number_in(const Json& position, const char* key) {
  const Json& value = position.at(key);
  if (value.is_number_integer() && !value.is_number_unsigned() && value.get<long long>() < 0)
    return 0;
  return value.get<std::size_t>();
}

/// The text with one change made. Places beyond its ends are those ends; an end before its beginning is
/// taken the other way round.
std::string changed(const std::string& text, const Json& change, service::Counted counted) {
  const auto replacement = change.at("text").get<std::string>();
  if (!change.contains("range") || change["range"].is_null())
    return replacement;
  const service::TextPlaces places(text);
  const auto byte = [&](const char* key) {
    const Json& position = change["range"].at(key);
    return places.at_line(number_in(position, "line"), number_in(position, "character"), counted).byte;
  };
  std::uint32_t begin = byte("start");
  std::uint32_t end = byte("end");
  if (end < begin)
    std::swap(begin, end);
  std::string result = text;
  return result.replace(begin, end - begin, replacement);
}

std::vector<std::string> paths_of(const Json& folders) {
  std::vector<std::string> result;
  if (folders.is_array())
    for (const Json& folder : folders)
      result.push_back(path_of_uri(folder.at("uri").get<std::string>()));
  return result;
}

} // namespace

void LanguageServer::did_open(const Json& params) {
  const Json& document = params.at("textDocument");
  const std::string path = path_in(params);
  auto text = document.at("text").get<std::string>();
  uris_[path] = document.at("uri").get<std::string>();
  versions_[path] = document.value("version", Json());
  workspace_.open(path, std::move(text));
  changed_.insert(path);
  unpublished_ = true;
}

void LanguageServer::did_change(const Json& params) {
  const std::string path = path_in(params);
  if (!workspace_.is_open(path))
    throw std::invalid_argument("the document is not open");
  std::string text = *workspace_.text(path);
  for (const Json& change : params.at("contentChanges"))
    text = changed(text, change, ways_.counted);
  versions_[path] = params.at("textDocument").value("version", Json());
  workspace_.change(path, std::move(text));
  changed_.insert(path);
  unpublished_ = true;
}

void LanguageServer::did_close(const Json& params) {
  const std::string path = path_in(params);
  workspace_.close(path);
  versions_.erase(path);
  changed_.erase(path);
  unpublished_ = true;
}

void LanguageServer::did_save(const Json&) {
  workspace_.forget_disk();
  unpublished_ = true;
}

void LanguageServer::watched_files_changed(const Json&) {
  workspace_.forget_disk();
  unpublished_ = true;
}

void LanguageServer::workspace_folders_changed(const Json& params) {
  const Json& event = params.at("event");
  std::vector<std::string> folders = workspace_.folders();
  for (const std::string& gone : paths_of(event.value("removed", Json::array())))
    std::erase(folders, gone);
  for (std::string& added : paths_of(event.value("added", Json::array())))
    folders.push_back(std::move(added));
  workspace_.set_folders(std::move(folders));
  unpublished_ = true;
}

Json LanguageServer::initialize(const Json& params) {
  const auto at = [&](const char* pointer) {
    const Json::json_pointer place(pointer);
    return params.contains(place) ? params[place] : Json();
  };
  const auto is_true = [&](const char* pointer) { return at(pointer) == Json(true); };
  const auto lists = [&](const char* pointer, const char* word) {
    const Json list = at(pointer);
    return list.is_array() && std::find(list.begin(), list.end(), Json(word)) != list.end();
  };

  if (const Json folders = at("/workspaceFolders"); folders.is_array())
    workspace_.set_folders(paths_of(folders));
  else if (const Json root = at("/rootUri"); root.is_string())
    workspace_.set_folders({path_of_uri(root.get<std::string>())});
  if (const Json allowed = at("/initializationOptions/allowFolders"); allowed.is_array())
    workspace_.set_allowed_folders(allowed.get<std::vector<std::string>>());
  if (lists("/capabilities/general/positionEncodings", "utf-8"))
    ways_.counted = service::Counted::utf8;
  const std::string document = "/capabilities/textDocument";
  ways_.snippets = is_true((document + "/completion/completionItem/snippetSupport").c_str());
  ways_.watches_files = is_true("/capabilities/workspace/didChangeWatchedFiles/dynamicRegistration");
  ways_.markdown = lists((document + "/hover/contentFormat").c_str(), "markdown");
  ways_.related = is_true((document + "/publishDiagnostics/relatedInformation").c_str());
  ways_.nested_outline = is_true((document + "/documentSymbol/hierarchicalDocumentSymbolSupport").c_str());
  initialized_ = true;

  Json can;
  can["positionEncoding"] = ways_.counted == service::Counted::utf8 ? "utf-8" : "utf-16";
  can["textDocumentSync"] = {{"openClose", true}, {"change", 2}, {"save", {{"includeText", false}}}};
  can["completionProvider"] = {{"triggerCharacters", Json::array({":", ".", "(", ">", "\""})}};
  can["hoverProvider"] = true;
  can["definitionProvider"] = true;
  can["referencesProvider"] = true;
  can["renameProvider"] = {{"prepareProvider", true}};
  can["documentFormattingProvider"] = true;
  can["documentSymbolProvider"] = true;
  can["foldingRangeProvider"] = true;
  can["inlayHintProvider"] = true;
  can["codeActionProvider"] = {{"codeActionKinds", Json::array({"quickfix", "source.fixAll"})}};
  can["semanticTokensProvider"] = {{"legend", token_legend()}, {"full", true}};
  can["workspace"] = {{"workspaceFolders", {{"supported", true}, {"changeNotifications", true}}}};
  return {{"capabilities", std::move(can)},
          {"serverInfo", {{"name", "sheerpole"}, {"version", SHEERPOLE_VERSION}}}};
}

Json LanguageServer::text_of_document(const Json& params) {
  const std::string path = path_in(params);
  if (!workspace_.is_open(path))
    throw std::invalid_argument("the document is not open");
  return {{"text", *workspace_.text(path)}};
}

} // namespace sheerpole::editor
