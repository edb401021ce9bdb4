#pragma once

#include "backend/tenths.hpp"
#include "calculate/derived.hpp"

namespace sheerpole {

/// A place along a piece as documents print it.
struct PrintedPlace {
  bool unknown = false; ///< X + tenths
  Tenths tenths;
};

/// One mark from both ends. The two add up to the printed cut: the distance to the nearer end is rounded,
/// the other is what the cut leaves.
struct PrintedMark {
  PrintedPlace from_upper;
  PrintedPlace from_lower;
};

/// `cut` is the printed total of the piece; with an unknown length what is added to X.
PrintedMark printed_mark(const BenchMark& mark, Tenths cut);

} // namespace sheerpole
