#pragma once

#include "calculate/strength/stay_directions.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"

#include <optional>

namespace sheerpole {

/// The foretriangle as the points make it.
struct Foretriangle {
  StayId forestay;
  std::optional<Length> height; ///< of the upper pin above the sheer; nothing: sheer-at-mast not stated
  /// From the fore side of the mast, where the upper pin stands, to the foot, level; the mast is followed
  /// down along its lean to the height of the foot. Nothing when the upper end is on no stated mast.
  std::optional<Length> base;
  SpacePoint foot; ///< where the line of the sail comes down: of a bridle between the ends of its legs
};

/// The stay that the foretriangle goes by: of those on the centreline that carry a sail and run down and
/// forward the one with the foremost foot. Where none is said to carry a sail, of those that stand all the
/// time and begin on a stated mast. Nothing when there is none.
std::optional<StayId> forestay_of(const Rig& rig);

/// Nothing without a forestay. Source: plane geometry, exact; which stay is meant is common practice, no
/// source.
std::optional<Foretriangle> foretriangle(const Rig& rig);

/// How a stay pulls on the chainplate at the end of its stack.
struct PlateLead {
  PartId plate;
  double lean_radians = 0.0; ///< of its plane at the top: inboard; of one athwartships forward
  bool lean_stated = false;
  bool athwartships = false;
  double off_radians = 0.0; ///< between the last part of the stay and the plate's plane
};

/// The chainplate at the end of the stack; nothing when something else is there.
std::optional<PartId> plate_of(const Rig& rig, const Stay& stay);

/// The plane of a plate goes through the boat's fore-and-aft line and leans inboard at its top by
/// `plane-lean`; that of a plate on the centreline stands upright when nothing is stated. A plate that
/// stands athwartships leans forward at its top. Nothing without a plate, a path, or, off the centreline or
/// athwartships, a stated lean. Source: plane geometry, exact.
std::optional<PlateLead> plate_lead(const Rig& rig, const Stay& stay);

/// Angle between a direction and such a plane, 0 to a quarter turn. `y_metres` tells the side, to starboard
/// more than 0.
double off_plate_plane(double x, double y, double z, double lean_radians, double y_metres);
/// The same of a plane across the boat.
double off_athwartships_plane(double x, double y, double z, double lean_radians);

/// The angle at which a shroud comes off the mast.
struct ShroudAtMast {
  double radians = 0.0;
  Remark against; ///< "mast", "mast, the nearest spar", "upright, no mast is stated"
};

/// Of a stay on port or starboard that begins at the mast and runs down and outwards to somewhere else than
/// this mast; its first part counts. Nothing for any other stay: on the centreline, from a spreader's tip
/// or a junction, on a bowsprit, or temporary. Source: stay_angle().
std::optional<ShroudAtMast> shroud_at_mast(const Rig& rig, const Stay& stay);

} // namespace sheerpole
