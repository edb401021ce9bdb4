#include "plugins/calendar/due_day.hpp"

#include "calculate/facts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace sheerpole {

namespace {

constexpr double seconds_of_day = 86400.0;

/// Whole days, halves up.
CalendarDay after(CalendarDay day, double seconds) {
  return {day.count + std::lround(seconds / seconds_of_day)};
}

/// The times of the last take-up record, each as written: "30 days".
std::vector<std::pair<double, std::string>> retune_times(const Rig& rig) {
  std::vector<std::pair<double, std::string>> times;
  for (const Record& record : rig.records) {
    if (record.kind != "take-up")
      continue;
    times.clear();
    if (const Particular* after = find_fact(record.facts, "after"))
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
  const std::string installed = fact_text(stay.particulars, "installed");
  const auto fitted = parse_day(installed);
  if (!fitted)
    return;
  for (const auto& [seconds, written] : retune_times(rig)) {
    const std::string time =
        written.empty() ? fmt::format("{} days", std::lround(seconds / seconds_of_day)) : written;
    days.push_back(
        {after(*fitted, seconds), "retune-" + hyphenated(time) + "-" + stay.name,
         "Retune " + stay.name + ", " + time + " after it was fitted",
         "Fitted on " + installed +
             ". Take up what bedding-in and creep have taken, and look at "
             "the adjuster: the take-up sheet says what should be left. One stay at a time; do not "
             "undo a pin of a loaded stay."});
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
  if (limit && last)
    days.push_back({after(*last, *limit), "look-" + rig[id].name, "Look at " + rig[id].name,
                    "Last looked at on " + format_day(*last) + "; the owner's limit is " +
                        rig.limits.text(Limit::inspection_age) +
                        ". Aloft: two lines, a harness and a second person."});
}

void add_age(const Rig& rig, const Stay& stay, std::vector<DueDay>& days) {
  const bool rope = rig[stay.material].kind == LineMaterial::Kind::rope;
  const Limit limit = rope ? Limit::rope_age : Limit::wire_age;
  const auto most = rig.limits.value(limit);
  const std::string installed = fact_text(stay.particulars, "installed");
  const auto fitted = parse_day(installed);
  if (most && fitted)
    days.push_back({after(*fitted, *most), "age-" + stay.name,
                    "The line of " + stay.name + " reaches the owner's limit of age",
                    "Installed on " + installed + "; the owner's limit is " + rig.limits.text(limit) +
                        ". It is no measure of strength: have it looked at, or replace it."});
}

} // namespace

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
      days.push_back(
          {*day, "waiver-" + waiver.slug + (waiver.stay.empty() ? "" : "-" + waiver.stay),
           "Last day of the waiver of " + waiver.slug + (waiver.stay.empty() ? "" : " for " + waiver.stay),
           "Waived by " + waiver.by + ": " + waiver.reason});
  std::stable_sort(days.begin(), days.end(),
                   [](const DueDay& a, const DueDay& b) { return a.day.count < b.day.count; });
  return days;
}

} // namespace sheerpole
