#pragma once

#include "base/result.hpp"
#include "driver/watch/watch_requests.hpp"

#include <cstdint>
#include <memory>
#include <string>

namespace sheerpole {

/// Speaks HTTP (RFC 9112) with programs of this machine: it listens on 127.0.0.1 and on no other address.
/// One thread, one request after the other.
class LocalServer {
public:
  /// Listens on the port; 0: one that is free. The error is what the system says.
  static Result<std::unique_ptr<LocalServer>, std::string> listen(std::uint16_t port);
  ~LocalServer();
  LocalServer(const LocalServer&) = delete;
  LocalServer& operator=(const LocalServer&) = delete;

  std::uint16_t port() const;
  /// Answers until SIGINT or SIGTERM comes.
  void run(const WatchRequests& requests);

private:
  struct Parts;
  explicit LocalServer(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> parts_;
};

/// 32 bytes of chance from the system as 64 hexadecimal digits; empty when it gives none.
std::string fresh_token();

} // namespace sheerpole
