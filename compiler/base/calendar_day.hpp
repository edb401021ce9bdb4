#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// A day of the Gregorian calendar as a count of days from 1970-01-01. No clock, no time zone.
struct CalendarDay {
  long count = 0;
};

/// "2026-05-02" (ISO 8601, calendar date, extended form). Nothing for anything else, also for a day that
/// there is not.
std::optional<CalendarDay> parse_day(std::string_view text);

/// "2026-05-02".
std::string format_day(CalendarDay day);

} // namespace sheerpole
