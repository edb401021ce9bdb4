#pragma once

#include "backend/backend.hpp"

#include <string>
#include <vector>

namespace sheerpole {

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

} // namespace sheerpole
