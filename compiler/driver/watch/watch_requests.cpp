#include "driver/watch/watch_requests.hpp"

#include "backend/json/json.hpp"
#include "base/byte_text.hpp"
#include "driver/page/page_file.hpp"

#include <optional>

namespace sheerpole {

namespace {

/// Looks at every sign, so that the time that it takes says nothing of where they differ.
bool same(std::string_view a, std::string_view b) {
  if (a.size() != b.size())
    return false;
  unsigned differ = 0;
  for (std::size_t i = 0; i < a.size(); ++i)
    differ |= static_cast<unsigned char>(a[i]) ^ static_cast<unsigned char>(b[i]);
  return differ == 0;
}

int digit(char c) {
  if (c >= '0' && c <= '9')
    return c - '0';
  const char small = static_cast<char>(c | 0x20);
  return small >= 'a' && small <= 'f' ? small - 'a' + 10 : -1;
}

/// A name as it stands in an address (RFC 3986, section 2.1); nothing when it is none.
std::optional<std::string> decoded(std::string_view text) {
  std::string result;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] != '%') {
      result += text[i];
      continue;
    }
    const int high = i + 2 < text.size() ? digit(text[i + 1]) : -1;
    const int low = high >= 0 ? digit(text[i + 2]) : -1;
    if (low < 0)
      return std::nullopt;
    result += static_cast<char>(high * 16 + low);
    i += 2;
  }
  return result;
}

WatchAnswer refused(int status, std::string words) {
  return {.status = status, .body = std::move(words) + "\n"};
}

/// The sum out of `"sum"` (RFC 9110, section 8.8.3); empty when it is none.
std::string sum_in(const std::string& tag) {
  return tag.size() > 2 && tag.front() == '"' && tag.back() == '"' ? tag.substr(1, tag.size() - 2)
                                                                   : std::string();
}

} // namespace

void WatchRequests::serve(std::string page, std::uint16_t port) {
  origin_ = "http://127.0.0.1:" + std::to_string(port);
  page_ = page_given(page_that_asks_its_server(std::move(page)), {{"folder", true}});
}

std::string WatchRequests::address() const {
  return origin_ + "/" + token_ + "/";
}

bool WatchRequests::is_ours(const WatchRequest& request) const {
  if (request.hosts.size() != 1 || "http://" + request.hosts.front() != origin_)
    return false;
  // A browser says from where whenever something is to be changed, and mostly when something is asked.
  if (request.origins.size() > 1 ||
      (request.origins.empty() && request.method == WatchRequest::Method::put))
    return false;
  for (const std::string& from : request.origins)
    if (from != origin_)
      return false;
  // "none": somebody has typed the address.
  for (const std::string& site : request.sites)
    if (site != "same-origin" && site != "none")
      return false;
  return true;
}

WatchAnswer WatchRequests::files() const {
  const ServedFolder::Content content = folder_.read();
  Json files = Json::object();
  for (const auto& [name, file] : content.files)
    files[name] = {{"text", file.text}, {"sum", file.sum}};
  Json left_out = Json::array();
  for (const auto& [name, why] : content.left_out)
    left_out.push_back({{"file", name}, {"why", why}});
  const Json all = {{"format", "sheerpole-folder"},
                    {"version", 1},
                    {"boat", boat_},
                    {"files", std::move(files)},
                    {"left_out", std::move(left_out)}};
  return {.type = "application/json", .body = all.dump(-1, ' ', false, Json::error_handler_t::replace)};
}

WatchAnswer WatchRequests::save(const std::string& name, const WatchRequest& request) const {
  const bool is_new = request.if_none_match == "*" && request.if_match.empty();
  const std::string was = sum_in(request.if_match);
  if (!is_new && was.empty())
    return refused(428, "which text is to be replaced is not said");
  switch (folder_.save(name, request.body, was)) {
  case Saved::written:
    return {.type = "application/json", .body = Json{{"sum", sha256(request.body)}}.dump()};
  case Saved::changed_meanwhile:
    return refused(412, "the file has changed meanwhile");
  case Saved::no_such_file:
    return refused(404, "the folder has no rig file of this name");
  case Saved::not_text:
    return refused(415, "it is no UTF-8 text, or longer than a rig file may be");
  case Saved::not_written:
    break;
  }
  return refused(507, "the folder or the disk does not allow it");
}

WatchAnswer WatchRequests::answer(const WatchRequest& request) const {
  const std::string begin = "/" + token_ + "/";
  const std::string_view target = request.target;
  // The token first: who has none learns nothing of what there is.
  if (!is_ours(request) || target.size() < begin.size() || !same(target.substr(0, begin.size()), begin))
    return refused(403, "not for you");
  const std::string_view asked = target.substr(begin.size());
  constexpr std::string_view file = "file/";
  if (request.method == WatchRequest::Method::put) {
    const auto name = asked.starts_with(file) ? decoded(asked.substr(file.size())) : std::nullopt;
    return name ? save(*name, request) : refused(404, "there is nothing to write to");
  }
  if (request.method != WatchRequest::Method::get)
    return refused(405, "not done here");
  if (asked.empty())
    return {.type = "text/html; charset=utf-8", .body = page_};
  if (asked == "files")
    return files();
  if (asked == "changes")
    return {.type = "text/event-stream", .follows = true};
  return refused(404, "there is nothing of this name");
}

} // namespace sheerpole
