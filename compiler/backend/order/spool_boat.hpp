#pragma once

#include "calculate/spool_plan/spool_order.hpp"
#include "results/checked_rig.hpp"

namespace sheerpole {

/// The boat as the plan of its stock takes it, with the title that its file states and without keys of its
/// files. Points into the rig.
SpoolBoat spool_boat(const CheckedRig& checked);

} // namespace sheerpole
