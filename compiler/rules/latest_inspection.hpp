#pragma once

#include "model/rig.hpp"

#include <vector>

namespace sheerpole {

/// The last entry of the inspection log about each thing of a stay: the stay as a whole, and every part or
/// joint that an entry names. In the order of the log.
std::vector<const Inspection*> latest_inspections(const Rig& rig, StayId stay);

/// "tang-10 to thimble-16", "turnbuckle-58", "the whole stay".
std::string inspected_thing(const Rig& rig, const Inspection& inspection);

} // namespace sheerpole
