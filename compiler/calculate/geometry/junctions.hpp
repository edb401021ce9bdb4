#pragma once

#include "calculate/strength/stay_directions.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"
#include "units/force.hpp"

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
  /// The same, each side for itself.
  std::array<std::vector<StayId>, 4> stays_by_direction = {};
  /// Of each of these, which share of its pull goes that way.
  std::array<std::vector<double>, 4> shares_by_direction = {};
};

inline constexpr std::array<PullDirection, 4> pull_directions{
    PullDirection::forward, PullDirection::aft, PullDirection::to_port, PullDirection::to_starboard};

/// Each standing spar (mast, mizzen, topmast) in the order of the rig; one that no stay ends on has no
/// stays. A stay counts when its end is above half of the mast's height (its length, else up to the highest
/// stay) and its lowest part, by which it pulls on mast and spreaders together, leans that way by more than
/// one in fifty. A stay from a mast back to itself pulls on nothing. Source: equilibrium of mast and
/// spreaders as one body, exact; the numbers are choices of the project.
std::vector<HeldDirections> held_directions(const Rig& rig);

/// The standing spar that the other end of a stay is on, which this one then rests on; null when it ends on
/// the hull or on another sort of spar.
const Spar* rests_on(const Rig& rig, const Stay& stay, const Spar& held);

/// What becomes of one mast when a stay parts.
struct AfterParting {
  std::size_t spar = 0;                       ///< in Rig::spars
  PullDirection way = PullDirection::forward; ///< to which the stay held it
  /// What still pulls that way, by name, without a side where both do; empty: it falls the other way.
  std::vector<std::string> left;
  /// Of none of these a tenth of the pull goes that way (a choice of the project): they lead along the
  /// mast.
  bool weakly = false;
  /// How high above the waterline the highest of these holds it, where the stay itself held it higher by
  /// more than a twentieth of the mast: above that nothing holds it that way.
  std::optional<Length> up_to = std::nullopt;
  bool at_once = true; ///< the stay itself held it; else it falls because what it rested on falls
};

/// All masts that a stay holds, and those that fall with them: a mast that nothing holds one way any more
/// takes with it every stay that ends on it. A stay at a junction takes those that meet it there. Source:
/// as of held_directions(); what a mast stands by itself is not counted.
std::vector<AfterParting> after_parting(const Rig& rig, StayId stay);

/// One leg of a junction.
struct JunctionLeg {
  StayId stay;
  double angle_radians = 0.0;       ///< between it and the straight going-on of the single stay
  std::optional<double> share = {}; ///< of its tension over the single stay's; nothing: it would push
};

/// A point where the stack of a stay ends in a part of the kind `junction` and other stays go on.
struct JunctionBalance {
  PointId at;
  StayId single;            ///< the one on its side; when it is not balanced: the first stay there
  std::vector<StayId> legs; ///< the others
  std::vector<PartId> parts =
      {}; ///< of the kind `junction` that the stacks name for it, each once: one plate
  std::vector<JunctionLeg> loaded = {}; ///< the legs, where it is balanced
  bool legs_are_a_pair = false;         ///< port and starboard of one stay
  /// Why there is no offset: "2 stays meet there, 3 are looked at".
  Remark not_checked;
  /// From the plane of the three ends, in which every place between the legs can be in equilibrium.
  Length off;
  /// From the line to the middle between the legs' ends: of a pair, how far its legs are from being alike.
  Length from_middle = {};
  std::optional<double>
      leg_share; ///< the greater tension of the legs over the stay's; nothing: a leg would push
};

/// Each junction in the order of the stays. The end of a stay is its next place from the junction. Source:
/// junction_offset(), bridle_tensions().
std::vector<JunctionBalance> junction_balances(const Rig& rig);

/// The load of a stay: the greatest of what is stated of it and what reaches it through a junction, the
/// share of the load of the single stay there. Nothing when neither is known. Its provenance says which.
std::optional<Sourced<Force>> load_of(const Rig& rig, StayId stay);

} // namespace sheerpole
