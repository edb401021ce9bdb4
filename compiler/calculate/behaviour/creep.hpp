#pragma once

#include "calculate/behaviour/behaviour_phrase.hpp"
#include "calculate/cut/piece.hpp"
#include "model/rig.hpp"

#include <optional>

namespace sheerpole {

/// Lasting stretch by creep in some time.
struct CreepAmount {
  std::optional<Length> amount; ///< nothing: not checked
  Remark how;
  Remark not_checked;
};

/// How much longer a body gets for good, by steady creep under the dock tension, in a time. From the
/// material's table (creep-rate records) between its points only; from one point with creep-energy,
/// creep-volume and fibre-section by Eyring's law; else from `creep`, the stretch of the first year, up to
/// a year and as a whole. No creep stated: not checked. Never beyond what is stated.
CreepAmount creep(const Rig& rig, const Stay& stay, const Piece& piece, double seconds);

} // namespace sheerpole
