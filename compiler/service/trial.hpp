#pragma once

#include "backend/change/change_words.hpp"
#include "calculate/change/rig_change.hpp"
#include "service/open_boat.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole::service {

/// What a boat would be with values set for a trial.
struct Trial {
  OpenBoat boat; ///< as she would be
  /// Against the boat as she is; nothing when either of the two has an error.
  std::optional<RigChange> change;
  std::optional<FindingsChange> findings; ///< points into both boats
};

/// `settings` as on the command line: `mast-step=25 mm`.
Trial try_settings(const OpenBoat& as_is, FileReader& reader, CompileOptions options,
                   std::vector<std::string> settings);

} // namespace sheerpole::service
