#pragma once

#include <algorithm>
#include <thread>

namespace sheerpole {

/// Most workers that can be asked for.
inline constexpr unsigned most_workers = 256;

/// How many work at once: as asked, and for 0 as many as there are processors for us.
inline unsigned workers_for(unsigned asked) {
  return asked != 0 ? asked : std::max(1U, std::thread::hardware_concurrency());
}

} // namespace sheerpole
