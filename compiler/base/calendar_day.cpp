#include "base/calendar_day.hpp"

namespace sheerpole {

namespace {

struct Date {
  long year = 0;
  long month = 1; ///< 1 to 12
  long day = 1;   ///< 1 to 31
};

/// Days from 1970-01-01 to a date of the proleptic Gregorian calendar, the year counted from 1 March so
/// that the leap day comes last. 146 097 days are 400 years, 719 468 lie between 0000-03-01 and 1970-01-01.
/// Source: arithmetic of the Gregorian rule (ISO 8601, 3.2.1).
long day_number(const Date& date) {
  const long year = date.month > 2 ? date.year : date.year - 1;
  const long era = (year >= 0 ? year : year - 399) / 400;
  const long year_of_era = year - era * 400;
  const long month = date.month > 2 ? date.month - 3 : date.month + 9;
  const long day_of_year = (153 * month + 2) / 5 + date.day - 1;
  const long day_of_era = year_of_era * 365 + year_of_era / 4 - year_of_era / 100 + day_of_year;
  return era * 146097 + day_of_era - 719468;
}

Date date_of(long number) {
  const long shifted = number + 719468;
  const long era = (shifted >= 0 ? shifted : shifted - 146096) / 146097;
  const long day_of_era = shifted - era * 146097;
  const long year_of_era =
      (day_of_era - day_of_era / 1460 + day_of_era / 36524 - day_of_era / 146096) / 365;
  const long day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
  const long month = (5 * day_of_year + 2) / 153;
  Date date;
  date.day = day_of_year - (153 * month + 2) / 5 + 1;
  date.month = month < 10 ? month + 3 : month - 9;
  date.year = year_of_era + era * 400 + (date.month <= 2 ? 1 : 0);
  return date;
}

std::optional<long> digits(std::string_view text) {
  long value = 0;
  for (const char c : text) {
    if (c < '0' || c > '9')
      return std::nullopt;
    value = value * 10 + (c - '0');
  }
  return value;
}

std::string padded(long value, std::size_t width) {
  std::string text = std::to_string(value);
  return text.size() < width ? std::string(width - text.size(), '0') + text : text;
}

} // namespace

std::optional<CalendarDay> parse_day(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-')
    return std::nullopt;
  const auto year = digits(text.substr(0, 4));
  const auto month = digits(text.substr(5, 2));
  const auto day = digits(text.substr(8, 2));
  if (!year || !month || !day || *month < 1 || *month > 12 || *day < 1 || *day > 31)
    return std::nullopt;
  const CalendarDay result{day_number({*year, *month, *day})};
  // A day that there is not, such as 30 February, comes out as another one.
  return format_day(result) == text ? std::optional(result) : std::nullopt;
}

std::string format_day(CalendarDay day) {
  const Date date = date_of(day.count);
  return padded(date.year, 4) + "-" + padded(date.month, 2) + "-" + padded(date.day, 2);
}

} // namespace sheerpole
