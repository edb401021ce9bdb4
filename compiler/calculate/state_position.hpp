#pragma once

#include "calculate/derived.hpp"

namespace sheerpole {

/// How a stay stands in a state: its adjusters as they are set there and what that makes of its length. The
/// bodies stay what they are, so the whole change is that of the adjusters.
DerivedPosition state_position(const Rig& rig, std::size_t state, std::size_t position);

} // namespace sheerpole
