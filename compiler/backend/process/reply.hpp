#pragma once

#include "backend/backend.hpp"
#include "base/result.hpp"

#include <string>
#include <string_view>

namespace sheerpole {

/// Why an answer can not be taken.
struct ReplyFault {
  enum class Kind {
    not_json,
    other_version, ///< `what` is the version
    not_as_agreed, ///< by the schema; `where` is the place in the answer
    file_name      ///< `where` is the name, `what` goes on from "which"
  };
  Kind kind = Kind::not_json;
  std::string where;
  std::string what;
};

/// Reads the answer to `describe`, docs/backends/describe-reply.schema.json. Members that are not known are
/// left alone.
Result<BackendDescription, ReplyFault> read_describe_reply(std::string_view text);

/// Reads the answer to `generate`, docs/backends/generate-reply.schema.json. Whether two files are of one
/// name is for the caller, who knows those of the others.
Result<OutputBundle, ReplyFault> read_generate_reply(std::string_view text);

/// The answers as a back end gives them. Bytes that are not UTF-8 travel as base 64.
std::string write_describe_reply(const BackendDescription& description);
std::string write_generate_reply(const OutputBundle& bundle);

} // namespace sheerpole
