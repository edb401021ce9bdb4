#pragma once

#include "base/result.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace sheerpole {

/// How deep JSON from outside may be nested; what is agreed needs four levels.
inline constexpr int deepest_json = 100;

/// Reads JSON (RFC 8259) that somebody else wrote, or says what is wrong with it.
Result<nlohmann::json, std::string> read_json(std::string_view text);

} // namespace sheerpole
