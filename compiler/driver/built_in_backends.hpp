#pragma once

#include "backend/backend.hpp"

#include <memory>
#include <vector>

namespace sheerpole {

/// Every back end that is linked in, in the order in which `list back-ends` shows them.
std::vector<std::unique_ptr<Backend>> built_in_backends();

/// Those that `build` runs when none is named: all but the ones that serve tests.
std::vector<std::unique_ptr<Backend>> usual_backends();

} // namespace sheerpole
