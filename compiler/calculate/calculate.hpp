#pragma once

#include "calculate/derived.hpp"

namespace sheerpole {

/// Calculates every length, piece and take-up of the rig. Never fails: what can not be known is said in the
/// result.
Derived calculate(const Rig& rig);

} // namespace sheerpole
