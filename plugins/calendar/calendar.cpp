#include "plugins/calendar/calendar.hpp"

#include "backend/boat_title.hpp"
#include "backend/drawing/element_id.hpp"
#include "plugins/calendar/due_day.hpp"
#include "plugins/calendar/ical_line.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// "20260502"
std::string basic_date(CalendarDay day) {
  std::string text = format_day(day);
  text.erase(std::remove(text.begin(), text.end(), '-'), text.end());
  return text;
}

std::string event_of(const DueDay& due, const std::string& boat, const std::string& stamp) {
  return ical_line("BEGIN:VEVENT") +
         ical_line("UID:" + element_id(due.id) + "@" + element_id(boat) + ".sheerpole") +
         ical_line("DTSTAMP:" + stamp + "T000000Z") +
         ical_line("DTSTART;VALUE=DATE:" + basic_date(due.day)) +
         ical_line("DTEND;VALUE=DATE:" + basic_date({due.day.count + 1})) +
         ical_line("SUMMARY:" + ical_text(due.summary)) + ical_line("DESCRIPTION:" + ical_text(due.note)) +
         ical_line("TRANSP:TRANSPARENT") + ical_line("END:VEVENT");
}

} // namespace

BackendDescription Calendar::describe() const {
  return {.name = "calendar",
          .summary = "days for retunes, looks, ages and waivers, for any calendar program",
          .outputs = {"calendar.ics"}};
}

OutputBundle Calendar::generate(const BackendRequest& request) const {
  const Boat& boat = request.checked.rig().boat;
  const std::string name = boat_title(request.checked);
  // A calendar asks when it was made; the day of the report is all that is known, and no clock is asked.
  const auto today = parse_day(boat.report_date);
  const std::string stamp = today ? basic_date(*today) : "19700101";
  std::string text = ical_line("BEGIN:VCALENDAR") + ical_line("VERSION:2.0") +
                     ical_line("PRODID:-//Sheerpole//Rig calendar//EN") +
                     ical_line("NAME:" + ical_text("Rig of " + name));
  for (const DueDay& due : due_days(request.checked))
    text += event_of(due, name, stamp);
  return {{{"calendar.ics", text + ical_line("END:VCALENDAR")}}};
}

} // namespace sheerpole
