#pragma once

#include "backend/backend.hpp"
#include "backend/drawing/drawing.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// From where the rig is seen.
enum class ViewKind {
  side,  ///< from starboard: bow to the right, up is up
  front, ///< from astern, looking forward: starboard to the right, up is up
  deck   ///< from above: bow up, starboard to the right
};

/// "side", "front", "deck": the word with which the ids of the view begin.
std::string_view name_of(ViewKind kind);

/// Where the boat's axes lie on the sheet.
struct ViewFrame {
  ViewKind kind = ViewKind::side;
  double millimetres_per_metre = 10.0;
  PaperPoint origin;     ///< of the boat's axes
  std::string mast = {}; ///< name of the mast that is shown alone; empty for all

  PaperPoint at(const Vector3& position) const;
};

/// The word with which the ids of a view begin: "side", "front-mizzen".
std::string id_of(const ViewFrame& frame);

/// The rig of one mast: the stays with an end on it or at it, the places on their paths, its spreaders. Ids
/// of all but points stay what they are.
Rig rig_of_mast(const Rig& rig, const Spar& mast);

/// The part of the view plane that a rig takes, metres: across to the right, down.
struct ViewExtent {
  double left = 0.0;
  double right = 0.0;
  double top = 0.0;
  double bottom = 0.0;
};

/// Room for all points, and for the waterline and the centreline where the view shows them.
ViewExtent extent_of(const Rig& rig, ViewKind kind);

/// A stay as one view shows it.
struct DrawnStay {
  const Stay* stay = nullptr;
  std::vector<PaperPoint> path;
  bool both_sides = false; ///< its twin falls on the same line, so one line stands for the pair
};

/// Largest distance on paper at which two marks count as one, millimetres.
inline constexpr double coincident = 0.05;

/// True when the two are no further apart than `within` in both directions.
bool near_each_other(PaperPoint a, PaperPoint b, double within);

/// The stays that have a path, in the order of the rig. Of a pair that coincides only the first is listed.
std::vector<DrawnStay> drawn_stays(const Rig& rig, const ViewFrame& frame);

/// Half way along the path as drawn.
PaperPoint middle_of(const DrawnStay& stay);

/// A place on `stays[index]` where a reader can tell it from the others: the sample with the largest clear
/// distance to any other line, up to a limit, and of equal ones the highest in the middle half.
PaperPoint label_site(const std::vector<DrawnStay>& stays, std::size_t index);

/// What the stay is called: its title, or its name without the side.
std::string shown_name(const Stay& stay);

} // namespace sheerpole
