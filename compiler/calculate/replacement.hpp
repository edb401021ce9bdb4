#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// The line of a stay against the one that hung there before: stiffness, strength and mass as ratios, the
/// mass of both and its moment about the lowest point of the path. Nothing when the stay replaces nothing;
/// each number that an input is missing for is left out and said. Source: arithmetic.
std::optional<Replacement> replacement(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces);

} // namespace sheerpole
