#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"

#include <optional>

namespace sheerpole {

/// How deep the longest straight run of a stay hangs under its own weight at the dock tension: square to
/// its chord, by the parabola w L^2 cos(slope) / (8 T). Nothing when dock-tension, linear-mass or a path is
/// not stated. Source: statics of a shallow cable; the elastic catenary differs by less than 1 % while the
/// sag is less than a sixteenth of the span.
std::optional<Sag> sag(const Rig& rig, const Stay& stay);

} // namespace sheerpole
