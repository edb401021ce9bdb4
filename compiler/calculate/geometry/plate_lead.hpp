#pragma once

#include "model/rig.hpp"

#include <optional>

namespace sheerpole {

/// How a stay pulls on the chainplate at the end of its stack.
struct PlateLead {
  PartId plate;
  double lean_radians = 0.0; ///< of the plate's plane inboard at its top, from upright
  bool lean_stated = false;
  double off_radians = 0.0; ///< between the last part of the stay and the plate's plane
};

/// The chainplate at the end of the stack; nothing when something else is there.
std::optional<PartId> plate_of(const Rig& rig, const Stay& stay);

/// The plane of a plate goes through the boat's fore-and-aft line and leans inboard at its top by
/// `plane-lean`; that of a plate on the centreline stands upright when nothing is stated. Nothing without a
/// plate, a path, or, off the centreline, a stated lean. Source: plane geometry, exact.
std::optional<PlateLead> plate_lead(const Rig& rig, const Stay& stay);

/// Angle between a direction and such a plane, 0 to a quarter turn. `y_metres` tells the side, to starboard
/// more than 0.
double off_plate_plane(double x, double y, double z, double lean_radians, double y_metres);

} // namespace sheerpole
