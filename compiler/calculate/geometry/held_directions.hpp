#pragma once

#include "model/rig.hpp"

#include <array>
#include <string>
#include <vector>

namespace sheerpole {

/// Which way the stays of a mast can pull it.
struct HeldDirections {
  std::size_t spar = 0;            ///< in Rig::spars
  std::size_t stays = 0;           ///< that end on it
  double half_height_metres = 0.0; ///< above which a stay counts
  /// Stays that pull forward, aft, to port and to starboard, by name without side, each once.
  std::array<std::vector<std::string>, 4> by_direction;
};
inline constexpr std::array<std::string_view, 4> direction_names{"forward", "aft", "to port",
                                                                 "to starboard"};

/// Each spar of the sort `mast` that a stay ends on, in the order of the rig. A stay counts when its end is
/// above half of the mast's height (its length, else up to the highest stay) and its lowest part, by which
/// it pulls on mast and spreaders together, leans that way by more than one in a hundred. A stay from a
/// mast back to itself pulls on nothing. Source: equilibrium of mast and spreaders as one body, exact; the
/// numbers are choices of the project.
std::vector<HeldDirections> held_directions(const Rig& rig);

} // namespace sheerpole
