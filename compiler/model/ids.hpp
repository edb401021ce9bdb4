#pragma once

#include "base/id.hpp"

namespace sheerpole {

/// The place of each thing in the vector of its kind in Rig.
using PointId = Id<struct PointTag>;
using MaterialId = Id<struct MaterialTag>;
using SpliceId = Id<struct SpliceTag>;
using PartId = Id<struct PartTag>;
using StayId = Id<struct StayTag>;
using BoundId = Id<struct BoundTag>;

} // namespace sheerpole
