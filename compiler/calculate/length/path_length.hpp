#pragma once

#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <optional>

namespace sheerpole {

/// Straight distance between two places.
Length distance(const Vector3& a, const Vector3& b);

/// Pin-to-pin length from the points: the sum of the straight segments along the path of the stay, one term
/// a segment, "cap-tang to tip-2". Nothing when the stay has no path of at least two points. Source:
/// Euclidean distance. The line is taken as straight between its points; the bend radius at a spreader tip
/// and the sag of the line are not in it.
std::optional<LengthSum> path_length(const Rig& rig, const Stay& stay);

} // namespace sheerpole
