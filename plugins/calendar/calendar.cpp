#include "plugins/calendar/calendar.hpp"

#include "backend/drawing/svg_writer.hpp"
#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/index_words.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sheerpole {

namespace {

constexpr double seconds_of_day = 86400.0;

/// Whole days, halves up. Nothing for a day that no calendar of four-digit years has, ISO 8601.
std::optional<CalendarDay> after(CalendarDay day, double seconds) {
  const CalendarDay last = *parse_day("9999-12-30");
  const double days = seconds / seconds_of_day;
  if (!(std::abs(days) < static_cast<double>(last.count)))
    return std::nullopt;
  const CalendarDay due{day.count + std::lround(days)};
  return due.count <= last.count ? std::optional(due) : std::nullopt;
}

/// The times of the last take-up record, each as written: "30 days".
std::vector<std::pair<double, std::string>> retune_times(const Rig& rig) {
  std::vector<std::pair<double, std::string>> times;
  for (const Record& record : rig.records) {
    if (record.kind != RecordKind::take_up)
      continue;
    times.clear();
    if (const Particular* after = find_fact(record.facts, fact_names.after))
      for (const Sourced<Quantity>& value : after->values)
        times.emplace_back(value.value.si, value.provenance.written);
  }
  return times;
}

/// With hyphens where blanks were, for an identifier.
std::string hyphenated(std::string text) {
  std::replace(text.begin(), text.end(), ' ', '-');
  return text;
}

void add_retunes(const Rig& rig, const Stay& stay, std::vector<DueDay>& days) {
  const std::string installed = fact_text(stay.particulars, fact_names.installed);
  const auto fitted = parse_day(installed);
  if (!fitted)
    return;
  for (const auto& [seconds, written] : retune_times(rig)) {
    const std::string time =
        written.empty() ? say(IndexPhrase::days, std::lround(seconds / seconds_of_day)) : written;
    const auto due = after(*fitted, seconds);
    if (!due)
      continue;
    days.push_back({*due, "retune-" + hyphenated(time) + "-" + stay.name,
                    say(IndexPhrase::retune_after_it_was_fitted, stay.name, time),
                    say(IndexPhrase::fitted_on_take_up_what, installed)});
  }
}

std::optional<CalendarDay> last_look(const Rig& rig, StayId stay) {
  std::optional<CalendarDay> last;
  for (const Inspection& entry : rig.inspections)
    if (std::find(entry.stays.begin(), entry.stays.end(), stay) != entry.stays.end())
      if (const auto day = parse_day(entry.date); day && (!last || day->count > last->count))
        last = day;
  return last;
}

void add_look(const Rig& rig, StayId id, std::vector<DueDay>& days) {
  const auto limit = rig.limits.value(Limit::inspection_age);
  const auto last = last_look(rig, id);
  const auto due = limit && last ? after(*last, *limit) : std::nullopt;
  if (due)
    days.push_back({*due, "look-" + rig[id].name, say(IndexPhrase::look_at, rig[id].name),
                    say(IndexPhrase::last_looked_at_on_owners, format_day(*last),
                        limit_text(rig.limits, Limit::inspection_age))});
}

void add_age(const Rig& rig, const Stay& stay, std::vector<DueDay>& days) {
  const bool rope = rig[stay.material].kind == LineMaterial::Kind::rope;
  const Limit limit = rope ? Limit::rope_age : Limit::wire_age;
  const auto most = rig.limits.value(limit);
  const std::string installed = fact_text(stay.particulars, fact_names.installed);
  const auto fitted = parse_day(installed);
  const auto due = most && fitted ? after(*fitted, *most) : std::nullopt;
  if (due)
    days.push_back(
        {*due, "age-" + stay.name, say(IndexPhrase::line_reaches_owners_limit_age, stay.name),
         say(IndexPhrase::installed_on_owners_limit_is, installed, limit_text(rig.limits, limit))});
}

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
         ical_line("SUMMARY:" + ical_text(boat + ": " + due.summary)) +
         ical_line("DESCRIPTION:" + ical_text(due.note)) + ical_line("TRANSP:TRANSPARENT") +
         ical_line("END:VEVENT");
}

/// The text with each of `from` as `to`.
std::string replaced(std::string text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
  return text;
}

/// One event of two that say the same of both sides on one day.
void join_twins(std::vector<DueDay>& days) {
  constexpr std::string_view port = ".port";
  constexpr std::string_view starboard = ".starboard";
  for (std::size_t i = 0; i < days.size(); ++i) {
    DueDay& due = days[i];
    const auto twin = std::find_if(days.begin(), days.end(), [&](const DueDay& other) {
      return other.day.count == due.day.count && other.id != due.id &&
             other.id == replaced(due.id, port, starboard) &&
             other.summary == replaced(due.summary, port, starboard) &&
             other.note == replaced(due.note, port, starboard);
    });
    if (twin == days.end())
      continue;
    due.id = replaced(due.id, port, "");
    due.summary = replaced(due.summary, port, say(IndexPhrase::port_and_starboard));
    due.note = replaced(due.note, port, say(IndexPhrase::port_and_starboard));
    const auto at = static_cast<std::size_t>(twin - days.begin());
    days.erase(twin);
    i -= at < i ? 1 : 0;
  }
}

} // namespace

std::string ical_text(std::string_view text) {
  std::string result;
  for (const char c : text) {
    if (c == '\\' || c == ';' || c == ',')
      result += '\\';
    if (c == '\n')
      result += "\\n";
    else
      result += static_cast<unsigned char>(c) < 0x20 || c == 0x7f ? ' ' : c;
  }
  return result;
}

std::string ical_line(std::string_view line) {
  constexpr std::size_t most = 75;
  std::string result;
  std::size_t room = most;
  while (line.size() > room) {
    std::size_t end = room;
    while (end > 1 && (static_cast<unsigned char>(line[end]) & 0xC0U) == 0x80U)
      --end; // not inside a character
    result += line.substr(0, end);
    result += "\r\n ";
    line.remove_prefix(end);
    room = most - 1; // the blank that the next line begins with counts
  }
  return result + std::string(line) + "\r\n";
}

std::vector<DueDay> due_days(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  std::vector<DueDay> days;
  for (std::size_t i = 0; i < rig.stays.size(); ++i) {
    const StayId id{static_cast<std::uint32_t>(i)};
    add_retunes(rig, rig[id], days);
    add_look(rig, id, days);
    add_age(rig, rig[id], days);
  }
  for (const Waiver& waiver : rig.waivers)
    if (const auto day = parse_day(waiver.until))
      days.push_back({*day, "waiver-" + waiver.slug + (waiver.stay.empty() ? "" : "-" + waiver.stay),
                      say(IndexPhrase::last_day_waiver, waiver.slug,
                          (waiver.stay.empty() ? "" : say(IndexPhrase::for_word, waiver.stay))),
                      say(IndexPhrase::waived_by, waiver.by, waiver.reason)});
  std::stable_sort(days.begin(), days.end(),
                   [](const DueDay& a, const DueDay& b) { return a.day.count < b.day.count; });
  join_twins(days);
  return days;
}

BackendDescription Calendar::describe() const {
  return {.name = "calendar",
          .summary = say(IndexPhrase::days_for_retunes_looks_ages),
          .outputs = {},
          .sometimes = {"calendar.ics"}};
}

OutputBundle Calendar::generate(const BackendRequest& request) const {
  // A calendar has one component at least: RFC 5545, 3.6 (from memory). Without a day there is none.
  const std::vector<DueDay> days = due_days(request.checked);
  if (days.empty())
    return {};
  const Boat& boat = request.checked.rig().boat;
  const std::string name = boat_title(request.checked);
  // A calendar asks when it was made; the day of the report is all that is known, and no clock is asked.
  const auto today = parse_day(boat.report_date);
  const std::string stamp = today ? basic_date(*today) : "19700101";
  std::string text = ical_line("BEGIN:VCALENDAR") + ical_line("VERSION:2.0") +
                     ical_line("PRODID:-//Sheerpole//Rig calendar//EN") +
                     ical_line("NAME:" + ical_text(say(IndexPhrase::rig_of, name)));
  for (const DueDay& due : days)
    text += event_of(due, name, stamp);
  return {{{"calendar.ics", text + ical_line("END:VCALENDAR")}}};
}

} // namespace sheerpole
