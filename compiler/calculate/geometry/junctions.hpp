#pragma once

#include "calculate/strength/stay_directions.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// Where a stay pulls its mast to.
enum class PullDirection { forward, aft, to_port, to_starboard };

/// Which way the stays of a mast can pull it.
struct HeldDirections {
  std::size_t spar = 0;            ///< in Rig::spars
  std::size_t stays = 0;           ///< that end on it
  double half_height_metres = 0.0; ///< above which a stay counts
  /// Stays that pull in each of the directions, in their order, by name without side, each once.
  std::array<std::vector<std::string>, 4> by_direction;
};

inline constexpr std::array<PullDirection, 4> pull_directions{
    PullDirection::forward, PullDirection::aft, PullDirection::to_port, PullDirection::to_starboard};

/// Each spar of the sort `mast` that a stay ends on, in the order of the rig. A stay counts when its end is
/// above half of the mast's height (its length, else up to the highest stay) and its lowest part, by which
/// it pulls on mast and spreaders together, leans that way by more than one in a hundred. A stay from a
/// mast back to itself pulls on nothing. Source: equilibrium of mast and spreaders as one body, exact; the
/// numbers are choices of the project.
std::vector<HeldDirections> held_directions(const Rig& rig);

/// A point where the stack of a stay ends in a part of the kind `junction` and other stays go on.
struct JunctionBalance {
  PointId at;
  StayId single;                ///< the one on its side; when it is not balanced: the first stay there
  std::vector<StayId> legs;     ///< the others
  bool legs_are_a_pair = false; ///< port and starboard of one stay
  /// Why there is no offset: "2 stays meet there, 3 are looked at".
  Remark not_checked;
  /// From the line to the middle between the legs' ends for a pair; else from the plane of the three ends.
  Length off;
  std::optional<double>
      leg_share; ///< the greater tension of the legs over the stay's; nothing: a leg would push
};

/// Each junction in the order of the stays. The end of a stay is its next place from the junction. Source:
/// junction_offset(), bridle_tensions().
std::vector<JunctionBalance> junction_balances(const Rig& rig);

} // namespace sheerpole
