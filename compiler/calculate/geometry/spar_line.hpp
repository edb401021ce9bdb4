#pragma once

#include "calculate/strength/space_point.hpp"
#include "model/rig.hpp"

#include <optional>
#include <string_view>

namespace sheerpole {

inline SpacePoint space_point(const Vector3& place) {
  return {place.x, place.y, place.z};
}
inline SpacePoint place_of(const Rig& rig, PointId point) {
  return space_point(rig[point].position);
}

/// The straight line of a spar from its heel to its other end.
struct SparLine {
  SpacePoint heel;
  SpaceVector along; ///< of length 1
};
SparLine spar_line(const Spar& spar);

/// A place seen from a spar.
struct FromSpar {
  Length along; ///< from the heel, towards the other end
  Length off;   ///< square to the line
};
FromSpar from_spar(const SparLine& line, const SpacePoint& place);

/// Whether it stands: a mast, a mizzen or a topmast.
bool stands(const Spar& spar);

/// The spar of this name; null when there is none.
const Spar* find_spar(const Rig& rig, std::string_view name);

/// How far from a mast's line its fittings are at most. Common practice, no source: no mast of a boat is a
/// metre thick.
inline constexpr double fitting_from_mast_metres = 0.5;

/// Why a point counts as one of a mast.
enum class OnMast {
  stated, ///< the file puts it there
  near,   ///< it is within fitting_from_mast_metres of the mast's line
};
struct MastOfPoint {
  const Spar* mast = nullptr;
  OnMast how = OnMast::stated;
};

/// The standing spar that a fitting is on: the one that the file names, else the nearest one. Nothing when
/// it is on another sort of spar, or near none. A spreader's tip is not on the mast.
std::optional<MastOfPoint> mast_of(const Rig& rig, const Point& point);

} // namespace sheerpole
