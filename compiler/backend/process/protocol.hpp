#pragma once

#include <string_view>

namespace sheerpole {

// What is said to programs outside and what they answer; docs/backends/outside.md.

inline constexpr int protocol_version = 1;
inline constexpr std::string_view request_format = "sheerpole-request";
inline constexpr std::string_view reply_format = "sheerpole-reply";

} // namespace sheerpole
