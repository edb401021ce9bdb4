#pragma once

#include "calculate/behaviour/behaviour_phrase.hpp"
#include "calculate/cut/piece.hpp"
#include "model/rig.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// A stay's line against the one before.
struct Replacement {
  MaterialId old_line;
  std::optional<double> stiffness; ///< new over old; likewise the others
  std::optional<double> strength;
  std::optional<double> mass;
  std::optional<double> new_kilograms;
  std::optional<double> old_kilograms;
  std::optional<Length> centre_height; ///< of the mass above the lowest point of the path
  std::vector<Remark> not_checked;
};

/// The line of a stay against the one that hung there before: stiffness, strength and mass as ratios, the
/// mass of both and its moment about the lowest point of the path. Nothing when the stay replaces nothing;
/// each number that an input is missing for is left out and said. Source: arithmetic.
std::optional<Replacement> replacement(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces);

} // namespace sheerpole
