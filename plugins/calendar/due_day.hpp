#pragma once

#include "backend/backend.hpp"
#include "base/calendar_day.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One day on which something is due.
struct DueDay {
  CalendarDay day;
  std::string id;      ///< the same for the same thing, whatever its day: "retune-30-days-cap-shroud.port"
  std::string summary; ///< "Retune cap-shroud.port, 30 days after it was fitted"
  std::string note;    ///< why, and from what it is counted
};

/// Retunes at the times of the `take-up` record after a stay was fitted; the next look at a stay and the
/// age of its line by the owner's limits; the last days of waivers. In the order of their days, then of the
/// rig. What has no day to be counted from, or no limit, is not in it.
std::vector<DueDay> due_days(const CheckedRig& checked);

} // namespace sheerpole
