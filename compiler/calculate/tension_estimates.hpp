#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"

#include <vector>

namespace sheerpole {

/// The tension of a stay from each of its tension-readings: of a first swing or a pulse by Mersenne's law
/// of the taut string over the free length, of a stretch over a marked length by Hooke's law. What an
/// estimate lacks is said in its place.
std::vector<TensionEstimate> tension_estimates(const Rig& rig, StayId stay);

} // namespace sheerpole
