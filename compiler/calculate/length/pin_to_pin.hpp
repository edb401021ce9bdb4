#pragma once

#include "calculate/length/length_sum.hpp"
#include "calculate/reading/length_routes.hpp"
#include "calculate/reading/reading_choice.hpp"
#include "model/rig.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// The pin-to-pin length of a stay by the way that was taken, and the others beside it.
struct PinToPin {
  LengthRoute route = LengthRoute::unknown;
  LengthSum sum;
  std::vector<RouteComparison> other_routes = {}; ///< readings with a number first, then stated, then path
  std::vector<Remark> not_corrected = {};         ///< of the reading that was taken
  ReadingChoice readings = {};
};

/// Chooses the way to the pin-to-pin length. What was read in place stands above a stated length, and that
/// above the points, whatever the order in the file; which of several readings counts says choose_reading.
/// A cord without a number makes the length X, also where another way has a number: that one is then the
/// expected X beside it. With no way at all the length is X and exists nowhere yet.
PinToPin pin_to_pin(const Rig& rig, const Stay& stay);

/// About how long the stay is from pin to pin, where its length is X: as its `estimate` says, else as the
/// first of the other ways does. For ordering, stretch and comparison; nothing is cut to it.
std::optional<Sourced<Length>> expected_pin_to_pin(const Rig& rig, const Stay& stay);

} // namespace sheerpole
