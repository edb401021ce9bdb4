#include "driver/editor/language_server.hpp"

#include "driver/editor/file_uri.hpp"

#include <algorithm>
#include <exception>
#include <stdexcept>
#include <utility>

namespace sheerpole::editor {

namespace {

// Codes of JSON-RPC 2.0 and of the Language Server Protocol 3.17.
constexpr int parse_error = -32700;
constexpr int invalid_request = -32600;
constexpr int method_not_found = -32601;
constexpr int invalid_params = -32602;
constexpr int server_error = -32603;
constexpr int server_not_initialized = -32002;
constexpr int request_cancelled = -32800;
constexpr int log_error = 1;
constexpr std::string_view cancelling = "$/cancelRequest";
/// A message that cancels says a method and an id; what is longer is another that speaks of it.
constexpr std::size_t longest_cancelling = 1000;

bool is_id(const Json& id) {
  return id.is_string() || id.is_number_integer();
}

} // namespace

const std::map<std::string_view, LanguageServer::Request>& LanguageServer::requests() {
  static const std::map<std::string_view, Request> all = {
      {"initialize", &LanguageServer::initialize},
      {"shutdown", &LanguageServer::shutdown},
      {"textDocument/completion", &LanguageServer::completion},
      {"textDocument/hover", &LanguageServer::hover},
      {"textDocument/definition", &LanguageServer::definition},
      {"textDocument/references", &LanguageServer::references},
      {"textDocument/prepareRename", &LanguageServer::prepare_rename},
      {"textDocument/rename", &LanguageServer::rename},
      {"textDocument/formatting", &LanguageServer::formatting},
      {"textDocument/documentSymbol", &LanguageServer::document_symbol},
      {"textDocument/foldingRange", &LanguageServer::folding_range},
      {"textDocument/inlayHint", &LanguageServer::inlay_hint},
      {"textDocument/codeAction", &LanguageServer::code_action},
      {"textDocument/semanticTokens/full", &LanguageServer::semantic_tokens},
      {"sheerpole/text", &LanguageServer::text_of_document},
      {"sheerpole/ask", &LanguageServer::ask_service},
  };
  return all;
}

const std::map<std::string_view, LanguageServer::Notification>& LanguageServer::notifications() {
  static const std::map<std::string_view, Notification> all = {
      {"initialized", &LanguageServer::initialized},
      {"exit", &LanguageServer::exit},
      {"textDocument/didOpen", &LanguageServer::did_open},
      {"textDocument/didChange", &LanguageServer::did_change},
      {"textDocument/didClose", &LanguageServer::did_close},
      {"textDocument/didSave", &LanguageServer::did_save},
      {"workspace/didChangeWatchedFiles", &LanguageServer::watched_files_changed},
      {"workspace/didChangeWorkspaceFolders", &LanguageServer::workspace_folders_changed},
      {"workspace/didChangeConfiguration", &LanguageServer::ignore},
      {"$/setTrace", &LanguageServer::ignore},
      {"$/cancelRequest", &LanguageServer::cancel_request},
  };
  return all;
}

LanguageServer::LanguageServer(std::vector<std::string> allowed_folders, Send send)
    : send_(std::move(send)) {
  workspace_.set_allowed_folders(std::move(allowed_folders));
}

void LanguageServer::take(std::string_view content) {
  const Json message = Json::parse(content, nullptr, false);
  if (message.is_discarded()) {
    answer_with_error(nullptr, parse_error, "the message is no JSON");
    return;
  }
  if (message.is_object() && message.contains("method") && message["method"].is_string()) {
    if (!message.contains("id"))
      notice(message);
    else if (is_id(message["id"]))
      answer(message);
    else
      answer_with_error(nullptr, invalid_request, "the id is neither a number nor a text");
    return;
  }
  // The answer to something that we asked; we ask nothing whose answer matters.
  if (message.is_object() && message.contains("id") &&
      (message.contains("result") || message.contains("error")))
    return;
  const bool has_id = message.is_object() && message.contains("id") && is_id(message["id"]);
  answer_with_error(has_id ? message["id"] : Json(), invalid_request, "the message is no request");
}

void LanguageServer::hear(std::string_view content) {
  if (content.size() > longest_cancelling || content.find(cancelling) == std::string_view::npos)
    return;
  const Json message = Json::parse(content, nullptr, false);
  if (!message.is_object() || message.value("method", Json()) != Json(cancelling))
    return;
  const Json params = message.value("params", Json());
  if (params.is_object() && params.contains("id") && is_id(params["id"]))
    cancelled_.insert(params["id"].dump());
}

/// When its turn comes the request before it has been answered.
void LanguageServer::cancel_request(const Json& params) {
  if (params.contains("id"))
    cancelled_.erase(params["id"].dump());
}

void LanguageServer::take_fault(const std::string& fault) {
  answer_with_error(nullptr, parse_error, fault);
}

void LanguageServer::answer(const Json& message) {
  const Json& id = message["id"];
  const auto method = message["method"].get<std::string>();
  const auto found = requests().find(method);
  if (shut_down_) {
    answer_with_error(id, invalid_request, "the server is shut down");
  } else if (!initialized_ && method != "initialize") {
    answer_with_error(id, server_not_initialized, "the first request is initialize");
  } else if (initialized_ && method == "initialize") {
    answer_with_error(id, invalid_request, "initialize was asked before");
  } else if (cancelled_.contains(id.dump())) {
    answer_with_error(id, request_cancelled, "cancelled");
  } else if (found == requests().end()) {
    answer_with_error(id, method_not_found, "there is no request " + method);
  } else {
    try {
      const Json params = message.contains("params") ? message["params"] : Json::object();
      const Json result = (this->*found->second)(params);
      send_({{"jsonrpc", "2.0"}, {"id", id}, {"result", result}});
    } catch (const Json::exception& wrong) {
      answer_with_error(id, invalid_params, std::string("the parameters are not those of ") + method);
    } catch (const std::invalid_argument& refused) {
      answer_with_error(id, invalid_params, refused.what());
    } catch (const std::exception& fault) {
      answer_with_error(id, server_error, fault.what());
    }
  }
}

void LanguageServer::notice(const Json& message) {
  const auto method = message["method"].get<std::string>();
  if (method != "exit" && (!initialized_ || shut_down_))
    return; // as the protocol asks
  const auto found = notifications().find(method);
  if (found == notifications().end()) {
    if (!method.starts_with("$/"))
      log("there is no notification " + method);
    return;
  }
  try {
    (this->*found->second)(message.contains("params") ? message["params"] : Json::object());
  } catch (const std::exception&) {
    log("the parameters are not those of " + method);
  }
}

void LanguageServer::answer_with_error(const Json& id, int code, const std::string& message) {
  send_({{"jsonrpc", "2.0"}, {"id", id}, {"error", {{"code", code}, {"message", message}}}});
}

void LanguageServer::log(const std::string& message) {
  send_({{"jsonrpc", "2.0"},
         {"method", "window/logMessage"},
         {"params", {{"type", log_error}, {"message", "sheerpole: " + message}}}});
}

Json LanguageServer::shutdown(const Json&) {
  shut_down_ = true;
  return nullptr;
}

void LanguageServer::exit(const Json&) {
  exit_code_ = shut_down_ ? 0 : 1;
}

void LanguageServer::initialized(const Json&) {
  if (!ways_.watches_files)
    return;
  const Json watchers = Json::array({{{"globPattern", "**/*.rig"}}});
  const Json registration = {{"id", "rig-files"},
                             {"method", "workspace/didChangeWatchedFiles"},
                             {"registerOptions", {{"watchers", watchers}}}};
  send_({{"jsonrpc", "2.0"},
         {"id", "watch-rig-files"},
         {"method", "client/registerCapability"},
         {"params", {{"registrations", Json::array({registration})}}}});
}

void LanguageServer::ignore(const Json&) {}

std::string LanguageServer::uri_of(const std::string& path) const {
  const auto known = uris_.find(path);
  return known == uris_.end() ? uri_of_path(path) : known->second;
}

void LanguageServer::publish() {
  unpublished_ = false;
  std::map<std::string, Json> findings;
  for (const service::OpenBoat* boat : workspace_.boats())
    for (const service::FileFindings& file : service::findings_by_file(*boat)) {
      Json& here = findings.emplace(file.file, Json::array()).first->second;
      // A library of two boats has findings that both meet.
      for (Json& each : diagnostics_json(*boat, file, ways_))
        if (std::find(here.begin(), here.end(), each) == here.end())
          here.push_back(std::move(each));
    }
  for (const auto& [path, was] : published_)
    findings.emplace(path, Json::array());
  for (auto& [path, here] : findings) {
    const std::string now = here.dump(-1, ' ', false, Json::error_handler_t::replace);
    const auto before = published_.find(path);
    const bool same = before == published_.end() ? here.empty() : before->second == now;
    if (same && !changed_.contains(path))
      continue;
    Json params = {{"uri", uri_of(path)}};
    if (const auto version = versions_.find(path); version != versions_.end() && !version->second.is_null())
      params["version"] = version->second;
    params["diagnostics"] = here;
    send_(
        {{"jsonrpc", "2.0"}, {"method", "textDocument/publishDiagnostics"}, {"params", std::move(params)}});
    if (here.empty())
      published_.erase(path);
    else
      published_[path] = now;
  }
  changed_.clear();
}

} // namespace sheerpole::editor
