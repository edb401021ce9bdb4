#pragma once

#include "calculate/length/length_sum.hpp"
#include "calculate/reading/length_routes.hpp"
#include "model/rig.hpp"

#include <vector>

namespace sheerpole {

/// The pin-to-pin length of a stay by the way that was taken, and the others beside it.
struct PinToPin {
  LengthRoute route = LengthRoute::unknown;
  LengthSum sum;
  std::vector<RouteComparison> other_routes = {}; ///< older readings first, then stated, then path
  std::vector<Remark> not_corrected = {};         ///< of the reading that was taken
};

/// Chooses the way to the pin-to-pin length: a reading with runs before a stated length, that before the
/// points. Of several readings with runs the last in the file wins, being the later layer. With no number
/// at all the length is X: it exists as a mark on a cord, or not yet.
PinToPin pin_to_pin(const Rig& rig, const Stay& stay);

} // namespace sheerpole
