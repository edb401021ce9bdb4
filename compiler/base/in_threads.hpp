#pragma once

#include <functional>

namespace sheerpole {

// Where threads are started below the driver, and nowhere else: in a page there are none.

/// How many threads are of use on this machine: one at least, and one where a program has no more.
unsigned threads_of_use();

/// Calls `work(part)` for each part from 0 to parts - 1, each in a thread of its own, the first one in that
/// of the caller, and returns when all have ended. Where there are no threads the parts come one after the
/// other. The parts must not throw, nor change what another one reads.
void in_threads(unsigned parts, const std::function<void(unsigned part)>& work);

} // namespace sheerpole
