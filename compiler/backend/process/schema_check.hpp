#pragma once

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// The first thing in which a document is not as a schema says.
struct SchemaFault {
  std::string where; ///< `files[0].name`; "the whole" for the document itself
  std::string what;
};

/// Looks whether the document is as the schema says, a JSON Schema of draft 7. Nothing when it is.
std::optional<SchemaFault> schema_fault(const nlohmann::json& document, std::string_view schema);

} // namespace sheerpole
