#pragma once

#include "calculate/derived.hpp"

namespace sheerpole {

/// Within its range, this adjuster has less thread in the body than it should. Beyond the range what the
/// thread does is a consequence and no finding of its own.
bool low_thread(const TakeUp& adjuster);

/// Closer to one end of its range than the rig's limits want. A lever is meant to stand at its end, and
/// what has too little thread or is beyond its range is said by those findings.
bool near_an_end(const Rig& rig, const TakeUp& adjuster);

/// A screw that is closed farther than the rig's limits want at first fit. What is near its end is said by
/// that finding.
bool mostly_closed(const Rig& rig, const TakeUp& adjuster);

/// How far an adjuster is closed as set: 0 at its longest, 1 at its shortest.
double closed_share(const TakeUp& adjuster);

/// Whether an adjuster is set within its range.
bool in_range(const TakeUp& adjuster);

} // namespace sheerpole
