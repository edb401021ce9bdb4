#pragma once

#include "backend/backend.hpp"
#include "base/calendar_day.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A text value of iCalendar: backslash, semicolon, comma and newline are written with a backslash (RFC
/// 5545, 3.3.11). Other control characters become blanks.
std::string ical_text(std::string_view text);

/// One content line, folded so that no line has more than 75 octets and no UTF-8 character is torn, with
/// its CRLF (RFC 5545, 3.1).
std::string ical_line(std::string_view line);

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

/// Days on which something about the rig is due, as iCalendar (RFC 5545).
struct Calendar final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
