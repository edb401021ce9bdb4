#pragma once

#include "backend/backend.hpp"
#include "base/result.hpp"
#include "driver/compile.hpp"
#include "driver/terminal.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What is to be sealed.
struct SealRequest {
  std::string file;
  CompileOptions rig; ///< nothing is set: a trial is not sealed
  std::vector<std::string> only;
  bool pdf = false;
  std::string paper = "a4";
};

/// Why there is no sealed folder; said to the user where it happened.
struct SealFailure {
  int code = exit_errors;
};

/// Compiles the rig, makes the papers and puts all of it together. Nothing is written.
Result<OutputBundle, SealFailure> make_seal(const SealRequest& request);

} // namespace sheerpole
