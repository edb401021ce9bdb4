#include "rules/evidence/dated_facts.hpp"

#include "units/format_length.hpp"

#include <cmath>

namespace sheerpole {

namespace {

constexpr double seconds_of_day = 86400.0;
constexpr double days_of_year = 365.25;

/// One decimal, none when it is whole.
std::string trimmed(double value) {
  return format_number(std::round(value * 10.0) / 10.0);
}

} // namespace

std::optional<CalendarDay> report_day(const Rig& rig) {
  return parse_day(rig.boat.report_date);
}

double years_between(CalendarDay from, CalendarDay to) {
  return static_cast<double>(to.count - from.count) / days_of_year;
}

std::string age_text(CalendarDay from, CalendarDay to) {
  const double years = years_between(from, to);
  if (years < 1.0)
    return std::to_string(to.count - from.count) + " days";
  return trimmed(years) + " years";
}

std::string years_text(double seconds) {
  const double years = seconds / (seconds_of_day * days_of_year);
  if (years < 1.0)
    return trimmed(seconds / seconds_of_day) + " days";
  return trimmed(years) + (years == 1.0 ? " year" : " years");
}

bool older_than(CalendarDay from, CalendarDay to, double seconds) {
  return static_cast<double>(to.count - from.count) * seconds_of_day > seconds;
}

} // namespace sheerpole
