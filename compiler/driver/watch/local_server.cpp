// The one file that speaks of libevent, of sockets and of chance.
#include "driver/watch/local_server.hpp"

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <event2/buffer.h>
#include <event2/event.h>
#include <event2/http.h>
#include <event2/keyvalq_struct.h>
#include <event2/listener.h>
#include <netinet/in.h>
#include <sys/random.h>
#include <sys/socket.h>
#include <vector>

namespace sheerpole {

namespace {

constexpr int most_waiting = 64;
/// A rig file and some signs more; what is longer is not taken in.
constexpr ev_ssize_t largest_body = 4 * 1024 * 1024 + 1024;
constexpr ev_ssize_t largest_headers = 16 * 1024;
constexpr int seconds_of_silence = 30;
/// How often the folder is looked at while a page listens.
constexpr timeval between_looks{.tv_sec = 0, .tv_usec = 300'000};
/// So many looks without news, and a listener is told that we are here: about 15 seconds.
constexpr int looks_without_a_word = 50;
/// Tabs that listen at once.
constexpr std::size_t most_listeners = 16;

struct FreeBuffer {
  void operator()(evbuffer* buffer) const { evbuffer_free(buffer); }
};
using Buffer = std::unique_ptr<evbuffer, FreeBuffer>;

std::vector<std::string> fields(evhttp_request* request, const char* name) {
  std::vector<std::string> found;
  for (const evkeyval* field = evhttp_request_get_input_headers(request)->tqh_first; field != nullptr;
       field = field->next.tqe_next)
    if (evutil_ascii_strcasecmp(field->key, name) == 0)
      found.emplace_back(field->value);
  return found;
}

std::string field(evhttp_request* request, const char* name) {
  const std::vector<std::string> found = fields(request, name);
  return found.size() == 1 ? found.front() : std::string();
}

WatchRequest taken(evhttp_request* request) {
  const evhttp_cmd_type command = evhttp_request_get_command(request);
  WatchRequest result{.method = command == EVHTTP_REQ_PUT   ? WatchRequest::Method::put
                                : command == EVHTTP_REQ_GET ? WatchRequest::Method::get
                                                            : WatchRequest::Method::other,
                      .target = evhttp_request_get_uri(request),
                      .hosts = fields(request, "Host"),
                      .origins = fields(request, "Origin"),
                      .sites = fields(request, "Sec-Fetch-Site"),
                      .if_match = field(request, "If-Match"),
                      .if_none_match = field(request, "If-None-Match"),
                      .body = {}};
  evbuffer* const body = evhttp_request_get_input_buffer(request);
  result.body.resize(evbuffer_get_length(body));
  evbuffer_copyout(body, result.body.data(), result.body.size());
  return result;
}

void add_fields(evhttp_request* request, const std::string& type) {
  evkeyvalq* const headers = evhttp_request_get_output_headers(request);
  // Nobody keeps it, nobody frames it, nobody takes it for something else, and the address goes nowhere.
  for (const auto& [name, value] : std::initializer_list<std::pair<const char*, const char*>>{
           {"Content-Type", type.c_str()},
           {"Cache-Control", "no-store"},
           {"X-Content-Type-Options", "nosniff"},
           {"X-Frame-Options", "DENY"},
           {"Referrer-Policy", "no-referrer"},
           {"Cross-Origin-Resource-Policy", "same-origin"},
           {"Cross-Origin-Opener-Policy", "same-origin"}})
    evhttp_add_header(headers, name, value);
}

Buffer buffer_of(const std::string& text) {
  Buffer buffer(evbuffer_new());
  if (buffer)
    evbuffer_add(buffer.get(), text.data(), text.size());
  return buffer;
}

} // namespace

struct LocalServer::Parts {
  struct FreeBase {
    void operator()(event_base* held) const { event_base_free(held); }
  };
  struct FreeEvent {
    void operator()(event* held) const { event_free(held); }
  };
  struct FreeHttp {
    void operator()(evhttp* held) const { evhttp_free(held); }
  };
  std::uint16_t port = 0;
  const WatchRequests* requests = nullptr;
  std::vector<evhttp_request*> listeners; ///< of pages that are told of changes
  std::string state;
  int looks = 0;
  // Freed first, since connections that end say so to the listeners.
  std::unique_ptr<event_base, FreeBase> base;
  std::vector<std::unique_ptr<event, FreeEvent>> events;
  std::unique_ptr<evhttp, FreeHttp> http;

  void tell(const std::string& words) {
    for (evhttp_request* const each : std::vector(listeners))
      if (const Buffer buffer = buffer_of(words))
        evhttp_send_reply_chunk(each, buffer.get());
  }

  void listen_to(evhttp_request* request) {
    if (listeners.size() >= most_listeners) {
      evhttp_send_error(request, 503, "too many pages listen");
      return;
    }
    if (listeners.empty())
      state = requests->state();
    listeners.push_back(request);
    evhttp_connection_set_closecb(evhttp_request_get_connection(request), gone, this);
    // Silence is what a listener hears mostly.
    evhttp_connection_set_timeout(evhttp_request_get_connection(request), 0);
    evhttp_send_reply_start(request, 200, "OK");
    // The page reads everything when it hears this, and so misses nothing that came before.
    if (const Buffer buffer = buffer_of("event: changed\ndata: \n\n"))
      evhttp_send_reply_chunk(request, buffer.get());
  }

  static void gone(evhttp_connection* connection, void* given) {
    auto& parts = *static_cast<Parts*>(given);
    std::erase_if(parts.listeners, [&](evhttp_request* each) {
      evhttp_connection* const its = evhttp_request_get_connection(each);
      if (its == nullptr)
        evhttp_send_reply_end(each); // taken from a connection that failed: it is ours to free
      return its == nullptr || its == connection;
    });
  }

  static void asked(evhttp_request* request, void* given) {
    auto& parts = *static_cast<Parts*>(given);
    const WatchAnswer answer = parts.requests->answer(taken(request));
    add_fields(request, answer.type);
    if (answer.follows) {
      parts.listen_to(request);
      return;
    }
    const Buffer buffer = buffer_of(answer.body);
    evhttp_send_reply(request, answer.status, answer.status == 200 ? "OK" : "Refused", buffer.get());
  }

  static void look(evutil_socket_t, short, void* given) {
    auto& parts = *static_cast<Parts*>(given);
    if (parts.listeners.empty())
      return;
    std::string now = parts.requests->state();
    if (now != parts.state) {
      parts.state = std::move(now);
      parts.looks = 0;
      parts.tell("event: changed\ndata: \n\n");
    } else if (++parts.looks >= looks_without_a_word) {
      parts.looks = 0;
      parts.tell(": here\n\n");
    }
  }

  static void end(evutil_socket_t, short, void* given) {
    event_base_loopbreak(static_cast<event_base*>(given));
  }
};

LocalServer::LocalServer(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
LocalServer::~LocalServer() = default;

Result<std::unique_ptr<LocalServer>, std::string> LocalServer::listen(std::uint16_t port) {
  auto parts = std::make_unique<Parts>();
  parts->base.reset(event_base_new());
  parts->http.reset(parts->base ? evhttp_new(parts->base.get()) : nullptr);
  if (!parts->http)
    return std::string("there is no memory for it");
  evhttp_set_allowed_methods(parts->http.get(), EVHTTP_REQ_GET | EVHTTP_REQ_PUT);
  evhttp_set_max_body_size(parts->http.get(), largest_body);
  evhttp_set_max_headers_size(parts->http.get(), largest_headers);
  evhttp_set_timeout(parts->http.get(), seconds_of_silence);
  // The address as a number: no name is looked up. The calls take every kind of address by one pointer.
  sockaddr_in address{};
  socklen_t size = sizeof address;
  address.sin_family = AF_INET;
  address.sin_port = htons(port);
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  evconnlistener* const listener =
      evconnlistener_new_bind(parts->base.get(), nullptr, nullptr,
                              LEV_OPT_REUSEABLE | LEV_OPT_CLOSE_ON_FREE | LEV_OPT_CLOSE_ON_EXEC,
                              most_waiting, reinterpret_cast<sockaddr*>(&address), sizeof address);
  if (listener == nullptr)
    return std::string(std::strerror(errno));
  if (evhttp_bind_listener(parts->http.get(), listener) == nullptr)
    return std::string("there is no memory for it");
  if (getsockname(evconnlistener_get_fd(listener), reinterpret_cast<sockaddr*>(&address), &size) != 0)
    return std::string(std::strerror(errno));
  parts->port = ntohs(address.sin_port);
  // From here on, so that whoever is told the address can end it in order.
  for (const int signal : {SIGINT, SIGTERM, SIGHUP}) {
    parts->events.emplace_back(evsignal_new(parts->base.get(), signal, Parts::end, parts->base.get()));
    evsignal_add(parts->events.back().get(), nullptr);
  }
  return std::unique_ptr<LocalServer>(new LocalServer(std::move(parts)));
}

std::uint16_t LocalServer::port() const {
  return parts_->port;
}

void LocalServer::run(const WatchRequests& requests) {
  event_base* const base = parts_->base.get();
  parts_->requests = &requests;
  evhttp_set_gencb(parts_->http.get(), Parts::asked, parts_.get());
  parts_->events.emplace_back(event_new(base, -1, EV_PERSIST, Parts::look, parts_.get()));
  evtimer_add(parts_->events.back().get(), &between_looks);
  event_base_dispatch(base);
}

std::string fresh_token() {
  std::array<unsigned char, 32> bytes{};
  std::size_t got = 0;
  while (got < bytes.size()) {
    const ssize_t more = getrandom(bytes.data() + got, bytes.size() - got, 0);
    if (more < 0 && errno != EINTR)
      return {};
    if (more > 0)
      got += static_cast<std::size_t>(more);
  }
  constexpr std::string_view digits = "0123456789abcdef";
  std::string token;
  for (const unsigned char byte : bytes) {
    token += digits[byte >> 4];
    token += digits[byte & 15];
  }
  return token;
}

} // namespace sheerpole
