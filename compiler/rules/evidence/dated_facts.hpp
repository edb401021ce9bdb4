#pragma once

#include "base/calendar_day.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"

#include <optional>
namespace sheerpole {

/// The day that the report speaks of; the clock is never asked.
std::optional<CalendarDay> report_day(const Rig& rig);

/// Years from one day to a later one, of 365.25 days.
double years_between(CalendarDay from, CalendarDay to);

/// "12.3 years", "45 days" below a year.
Remark age_words(CalendarDay from, CalendarDay to);

/// "10 years", from seconds.
Remark years_words(double seconds);

/// Whether `from` lies more than so many seconds before `to`.
bool older_than(CalendarDay from, CalendarDay to, double seconds);

} // namespace sheerpole
