#pragma once

#include "backend/backend.hpp"
#include "base/result.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

// What is said to programs outside and what they answer; docs/backends/outside.md.

inline constexpr int protocol_version = 1;
inline constexpr std::string_view request_format = "sheerpole-request";
inline constexpr std::string_view reply_format = "sheerpole-reply";

/// One file that a rig is made of, by its name from the folder of the rig file.
struct RigText {
  std::string name;
  std::string text;
};

/// What a rig was worked out from. The same compiler works out the same rig from it.
struct RigOrigin {
  std::string rig; ///< name of the rig file, one of `files`
  std::vector<RigText> files;
  std::vector<std::string> settings; ///< of the command line: `mast-step=25 mm`
  std::string shop;                  ///< for which lengths are restated; may be empty
};

/// The request `describe`: what are you called, and what do you make? One line of JSON.
std::string describe_request(const std::string& compiler_version);

/// The request `generate`: everything that a back end may use, docs/backends/request.schema.json. Of the
/// fleet and of the rig as it was it says nothing. One line of JSON.
std::string generate_request(const BackendRequest& request, const RigOrigin& origin,
                             const std::string& compiler_version);

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
