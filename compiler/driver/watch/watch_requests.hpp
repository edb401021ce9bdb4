#pragma once

#include "driver/watch/served_folder.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole {

/// What a browser asks of the page's server. Header fields are those that somebody sent, each as often as
/// it was sent.
struct WatchRequest {
  enum class Method : std::uint8_t { get, put, other };
  Method method = Method::other;
  std::string target; ///< "/token/files", as it was sent
  std::vector<std::string> hosts;
  std::vector<std::string> origins;
  std::vector<std::string> sites; ///< `Sec-Fetch-Site`
  std::string if_match;           ///< the sum of the file that is to be replaced, in quotes
  std::string if_none_match;      ///< `*`: there is to be none
  std::string body;
};

struct WatchAnswer {
  int status = 200;
  std::string type = "text/plain; charset=utf-8";
  std::string body = {};
  bool follows = false; ///< the connection stays: it is told whenever the folder changes
};

/// Answers what is asked of one folder by the page that was opened with `token`, and refuses everybody
/// else:
///
///   GET /token/          the page
///   GET /token/files     every rig file of the folder with its text and sum, as JSON
///   GET /token/changes   told whenever a file changes, as server-sent events
///   PUT /token/file/NAME puts a text in the place of the file, if its sum is still that of `If-Match`
///
/// Whoever has another `Host` came by a name that somebody has bound to this machine; whoever has another
/// `Origin` is a page of somebody else.
class WatchRequests {
public:
  WatchRequests(ServedFolder folder, std::string boat, std::string token)
      : folder_(std::move(folder)), boat_(std::move(boat)), token_(std::move(token)) {}

  /// What is served to the page's address, which names the port: both are known when the port is.
  void serve(std::string page, std::uint16_t port);
  /// Where the page is, for somebody to open: `http://127.0.0.1:4040/token/`.
  std::string address() const;

  WatchAnswer answer(const WatchRequest& request) const;
  std::string state() const { return folder_.state(); }

private:
  bool is_ours(const WatchRequest& request) const;
  WatchAnswer files() const;
  WatchAnswer save(const std::string& name, const WatchRequest& request) const;

  ServedFolder folder_;
  std::string boat_; ///< name of the rig file that is opened first; empty: the page chooses
  std::string token_;
  std::string page_;
  std::string origin_;
};

} // namespace sheerpole
