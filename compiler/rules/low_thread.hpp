#pragma once

#include "calculate/derived.hpp"

namespace sheerpole {

/// Within its range, this adjuster has less thread in the body than it should. Beyond the range what the
/// thread does is a consequence and no finding of its own.
bool low_thread(const TakeUp& adjuster);

} // namespace sheerpole
