#pragma once

#include <malloc.h>

#include <algorithm>
#include <thread>

namespace sheerpole {

/// Most workers that can be asked for.
inline constexpr unsigned most_workers = 256;

/// How many work at once: as asked, and for 0 as many as there are processors for us.
inline unsigned workers_for(unsigned asked) {
  return asked != 0 ? asked : std::max(1U, std::thread::hardware_concurrency());
}

/// What is given back from one boat is kept for the next: to ask the system for it again each time would
/// take a fifth of the whole.
inline void keep_memory() {
#ifdef __GLIBC__
  mallopt(M_MMAP_THRESHOLD, 16 << 20);
  mallopt(M_TRIM_THRESHOLD, 64 << 20);
#endif
}

} // namespace sheerpole
