#pragma once

#include "calculate/derived.hpp"

namespace sheerpole {

/// The reading that the length of a stay rests on: the last with runs. Null when it rests on none.
const Reading* used_reading(const Rig& rig, const DerivedStay& stay);

} // namespace sheerpole
