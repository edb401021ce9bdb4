#pragma once

#include "results/checked_rig.hpp"

#include <string>

namespace sheerpole {

/// The boat's name as every document prints it: "Boat without a name" when she has none.
std::string boat_title(const CheckedRig& checked);

} // namespace sheerpole
