#pragma once

#include "base/calendar_day.hpp"
#include "model/rig.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// The day that the report speaks of; the clock is never asked.
std::optional<CalendarDay> report_day(const Rig& rig);

/// Years from one day to a later one, of 365.25 days.
double years_between(CalendarDay from, CalendarDay to);

/// "12.3 years", "45 days" below a year.
std::string age_text(CalendarDay from, CalendarDay to);

/// "10 years", from seconds.
std::string years_text(double seconds);

/// Whether `from` lies more than so many seconds before `to`.
bool older_than(CalendarDay from, CalendarDay to, double seconds);

/// Why an age can not be looked at when the report has no day.
inline constexpr std::string_view no_report_date = "the boat's report-date is not stated";

} // namespace sheerpole
