#pragma once

#include "calculate/strength/stay_directions.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

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

/// Whether the stay ends in a plate where several meet: its length counts to the middle of the plate, and
/// the hole of the stay is not where its path ends.
bool ends_in_plate(const Rig& rig, const Stay& stay, WhichEnd where);
/// Whether stays meet in a plate at the point. Unless the file says what spar it is on, it hangs in the
/// air, however near to a mast.
bool is_plate_in_air(const Rig& rig, const Point& point);

/// The standing spars that begin at the deck or below, in the order of the rig: a topmast belongs to the
/// mast that its heel is at.
std::vector<const Spar*> masts_of(const Rig& rig);
/// The mast that a standing spar belongs to: itself, or of a topmast the one that carries it.
const Spar& carrier_of(const Rig& rig, const Spar& spar);

/// The mast that one end of a stay belongs to, never a topmast: the one that the end is on, else that of
/// the other end, else that of a stay which meets it at one of its ends (the leg of a bridle). Null without
/// a path or a mast.
const Spar* mast_at(const Rig& rig, const Stay& stay, WhichEnd where);

/// Whether both ends are on standing spars, and not on the same.
bool between_masts(const Rig& rig, const Stay& stay);

/// A line that goes over the tip of a spreader.
struct LineOverTip {
  StayId stay;
  std::size_t stop = 0; ///< in its path
  bool clamped = false;
  std::optional<TipBend> bend; ///< nothing when two places are one
  double rise_radians = 0.0;   ///< of the spreader, outwards
  /// The rise that would halve the angle of the line. Nothing when the line does not bend towards the mast
  /// in the plane in which the spreader can be lifted.
  std::optional<double> halving_radians;

  /// How much too high (more than 0) or too low the tip is to halve the angle of the line.
  double off_bisector() const { return halving_radians ? rise_radians - *halving_radians : 0.0; }
};

/// What meets at the tip of a spreader. A rise is counted from level, in the upright plane through the
/// spreader; that of a strut that is nearer to upright than to level (a dolphin striker) from upright, in
/// the upright plane along the line.
struct SpreaderTip {
  std::size_t spreader = 0; ///< in Rig::spreaders
  std::vector<LineOverTip> lines;
  std::vector<StayId> ending; ///< stays with an end there
};

/// Each spreader with what meets at its tip, in the order of the rig. Source of the angles: the line
/// presses along the bisector of its two parts, see bisecting_elevation() and tip_bend().
std::vector<SpreaderTip> spreader_tips(const Rig& rig);

/// The line by which a spreader is set: one that is clamped to it goes before those that run free, and of
/// several the one whose angle it halves best. Null when no line bends over it.
const LineOverTip* line_that_sets(const SpreaderTip& tip);

} // namespace sheerpole
