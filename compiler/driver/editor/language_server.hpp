#pragma once

#include "driver/built_in_backends.hpp"
#include "driver/editor/lsp_json.hpp"
#include "driver/editor/workspace.hpp"
#include "service/answers.hpp"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole::editor {

/// Answers an editor in the Language Server Protocol 3.17. Takes the content of one message after the other
/// and hands what is to be sent to `send`; knows nothing of how messages travel.
///
/// Whatever comes, it goes on: what is no JSON, no request or asks for nothing that is known is answered
/// with the error that the protocol has for it.
class LanguageServer {
public:
  using Send = std::function<void(const Json& message)>;

  LanguageServer(std::vector<std::string> allowed_folders, Send send);

  void take(std::string_view content);
  /// To be told of each message that waits, before one is taken: a request that is cancelled by one behind
  /// it is not worked on.
  void hear(std::string_view content);
  /// Bytes came that are no message.
  void take_fault(const std::string& fault);
  /// Sends the findings of what has changed. Called when no message waits, so that a fast typist is told of
  /// the last state and not of each.
  void publish();
  bool has_to_publish() const { return unpublished_; }
  /// The code to leave with, once the client has said `exit`: 0 after `shutdown`, else 1.
  std::optional<int> exit_code() const { return exit_code_; }

private:
  using Request = Json (LanguageServer::*)(const Json& params);
  using Notification = void (LanguageServer::*)(const Json& params);
  static const std::map<std::string_view, Request>& requests();
  static const std::map<std::string_view, Notification>& notifications();

  void answer(const Json& message);
  void notice(const Json& message);
  void answer_with_error(const Json& id, int code, const std::string& message);
  void log(const std::string& message);

  Json initialize(const Json& params);
  Json shutdown(const Json& params);
  Json completion(const Json& params);
  Json hover(const Json& params);
  Json definition(const Json& params);
  Json references(const Json& params);
  Json prepare_rename(const Json& params);
  Json rename(const Json& params);
  Json formatting(const Json& params);
  Json document_symbol(const Json& params);
  Json folding_range(const Json& params);
  Json inlay_hint(const Json& params);
  Json code_action(const Json& params);
  Json semantic_tokens(const Json& params);
  Json text_of_document(const Json& params);
  /// A request of the service itself, which has more than the protocol: papers, numbers, trials.
  Json ask_service(const Json& params);

  void initialized(const Json& params);
  void exit(const Json& params);
  void did_open(const Json& params);
  void did_change(const Json& params);
  void did_close(const Json& params);
  void did_save(const Json& params);
  void watched_files_changed(const Json& params);
  void workspace_folders_changed(const Json& params);
  void cancel_request(const Json& params);
  void ignore(const Json& params);

  /// A document of a request, in the boat that it belongs to.
  struct Asked {
    const service::OpenBoat* boat;
    SourceId source;
  };
  std::optional<Asked> asked(const Json& params);
  std::string uri_of(const std::string& path) const;

  Workspace workspace_;
  Backends backends_;                       ///< made when the service is asked
  std::optional<service::Answers> answers_; ///< the same
  Send send_;
  ClientWays ways_;
  bool initialized_ = false;
  bool shut_down_ = false;
  bool unpublished_ = false;
  std::optional<int> exit_code_;
  std::set<std::string> cancelled_;         ///< ids, as JSON, of requests that a message behind cancels
  std::map<std::string, std::string> uris_; ///< by path, as the client wrote them
  std::map<std::string, Json> versions_;    ///< of open documents, by path
  std::map<std::string, std::string> published_; ///< by path: the findings that the client has
  std::set<std::string> changed_;                ///< open documents whose findings are to be sent anyway
};

} // namespace sheerpole::editor
