#pragma once

#include "base/result.hpp"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// How deep JSON from outside may be nested; what is agreed needs four levels.
inline constexpr int deepest_json = 100;

/// Reads JSON (RFC 8259) that somebody else wrote, or says what is wrong with it.
Result<nlohmann::json, std::string> read_json(std::string_view text);

// The files of docs/backends of these names, put into the program when it is built: what is promised there
// is what is looked at here.
extern const std::string_view describe_reply_schema;
extern const std::string_view generate_reply_schema;

/// The first thing in which a document is not as a schema says.
struct SchemaFault {
  std::string where; ///< `files[0].name`; "the whole" for the document itself
  std::string what;
};

/// Looks whether the document is as the schema says, a JSON Schema of draft 7. Nothing when it is.
std::optional<SchemaFault> schema_fault(const nlohmann::json& document, std::string_view schema);

} // namespace sheerpole
