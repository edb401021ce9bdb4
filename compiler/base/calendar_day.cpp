#include "base/calendar_day.hpp"

#include <chrono>

namespace sheerpole {

namespace {

std::optional<int> digits(std::string_view text) {
  int value = 0;
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
  if (!year || !month || !day)
    return std::nullopt;
  const std::chrono::year_month_day date{std::chrono::year{*year},
                                         std::chrono::month{static_cast<unsigned>(*month)},
                                         std::chrono::day{static_cast<unsigned>(*day)}};
  if (!date.ok())
    return std::nullopt;
  return CalendarDay{std::chrono::sys_days{date}.time_since_epoch().count()};
}

std::string format_day(CalendarDay day) {
  const std::chrono::year_month_day date{std::chrono::sys_days{std::chrono::days{day.count}}};
  return padded(static_cast<int>(date.year()), 4) + "-" +
         padded(static_cast<long>(static_cast<unsigned>(date.month())), 2) + "-" +
         padded(static_cast<long>(static_cast<unsigned>(date.day())), 2);
}

} // namespace sheerpole
