#pragma once

#include "calculate/geometry/stay_clearance.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What was found of each stay, by its number.
std::vector<std::vector<const NearMiss*>> misses_by_stay(const Rig& rig, const NearMisses& misses);

/// "3.2 mm".
std::string tenths_of(Length length);

/// "5.21 m above the waterline".
std::string height_text(const SpacePoint& place);

} // namespace sheerpole
