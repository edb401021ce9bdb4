#pragma once

#include "calculate/derived.hpp"
#include "calculate/uncertainty/rig_uncertainty.hpp"

namespace sheerpole {

/// Calculates every length, piece and take-up of the rig. Never fails: what can not be known is said in the
/// result, which does not depend on the number of threads; 0 means as many as there are processors. How
/// well lengths are known is worked out as far as its reader asks.
Derived calculate(const Rig& rig, unsigned threads = 0, DoubtFor reader = DoubtFor::papers);

} // namespace sheerpole
