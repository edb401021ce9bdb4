#include "wording/state_words.hpp"

#include "calculate/adjust/piece_history.hpp"
#include "calculate/reading/reading_length.hpp"
#include "model/kind_words.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/say.hpp"

#include <cmath>

namespace sheerpole {

namespace {

/// "the cord", "tape"; of a reading that does not say how, "a reading".
std::string method_words(const Reading& reading) {
  if (reading.method == ReadingMethod::messenger)
    return "the cord";
  if (reading.method == ReadingMethod::old_stay)
    return "the old stay";
  if (reading.method != ReadingMethod::unstated)
    return std::string(name_of(reading.method));
  return reading.is_mark_alone() ? "the cord" : "a reading";
}

/// Whole millimetres, up: what agrees to 1.5 mm agrees to 2 mm and not to 1.
std::string whole_up(Length length) {
  return format_millimetres(Length::millimetres(std::ceil((length - rounding_of_sums).millimetres())), 0);
}

std::string with_day(std::string words, const Reading& reading) {
  return reading.date.empty() ? words : words + ", " + reading.date;
}

} // namespace

std::string reading_name(const Reading& reading) {
  std::string words = method_words(reading);
  const std::string kept_by = reading.cord.empty() ? reading.mark : say(where_x_lies(reading));
  for (const std::string& more :
       {reading.is_mark_alone() ? kept_by : std::string(), reading.date, reading.by})
    if (!more.empty())
      words += ", " + more;
  return words;
}

std::string measured_words(const Rig& rig, const DerivedStay& stay) {
  switch (stay.measurement.by) {
  case MeasuredBy::nothing:
    return {};
  case MeasuredBy::statement:
    return "as stated";
  case MeasuredBy::points:
    return "by measured points";
  case MeasuredBy::reading:
    break;
  }
  // A stay put together without its readings says no more than that there was one.
  if (!stay.readings.taken)
    return "in place";
  const Reading& reading = rig[stay.stay].readings[*stay.readings.taken];
  return with_day("by " + method_words(reading), reading);
}

std::string confirmed_words(const Rig& rig, const DerivedStay& stay,
                            const std::function<std::string(Length)>& length_words) {
  const auto& found = stay.measurement.confirmed;
  if (!found)
    return {};
  std::string to;
  if (found->within)
    to = " to " + (length_words ? length_words(*found->within) : whole_up(*found->within) + " mm");
  switch (found->by) {
  case ConfirmedBy::second_run:
    return "confirmed by a second run" + to;
  case ConfirmedBy::statement:
    return "confirmed by the stated length" + to;
  case ConfirmedBy::points:
    return "confirmed by measured points" + to;
  case ConfirmedBy::dry_fit: {
    const FoundHang* hung = stay.hoisted_fit ? stay.hoisted_fit->latest() : nullptr;
    return "confirmed by the dry fit" +
           (hung == nullptr || hung->date.empty() ? "" : " of " + hung->date + ",") + to;
  }
  case ConfirmedBy::reading:
    break;
  }
  const Reading& reading = rig[stay.stay].readings[*found->reading];
  if (!found->within)
    return "confirmed: the cord came to the same mark" +
           (reading.date.empty() ? "" : " on " + reading.date);
  return "confirmed by " + with_day(method_words(reading), reading) + (reading.date.empty() ? "" : ",") +
         to;
}

std::string state_words(const Rig& rig, const DerivedStay& stay, PieceState state, bool own_length,
                        const std::function<std::string(Length)>& length_words) {
  const std::string by = measured_words(rig, stay);
  switch (state) {
  case PieceState::not_measured:
    if (stay.measurement.from_drawing)
      return "FROM DRAWING: not measured in place; " + *stay.measurement.from_drawing;
    return "NOT MEASURED: nothing was read in place; order by it and cut nothing";
  case PieceState::not_yet:
    return "NOT YET: this is a DRAFT, cut nothing" +
           (stay.measurement.from_drawing ? "; FROM DRAWING, " + *stay.measurement.from_drawing : "");
  case PieceState::on_record:
    return "ON RECORD: cut no second one";
  case PieceState::measured_once:
    return "MEASURED ONCE: " + by + "; measure again before you cut";
  case PieceState::ready:
    break;
  }
  if (own_length)
    return "READY: a length of its own, as stated";
  return "READY: measured " + by + "; " + confirmed_words(rig, stay, length_words);
}

std::string record_words(const Rig& rig, const DerivedStay& stay, std::size_t piece,
                         const std::function<std::string(Length)>& length_words) {
  const PieceHistory history = piece_history(rig, stay, piece);
  std::string words = "ON RECORD";
  for (const PieceEntry& entry : history.entries) {
    const PieceRecord& record = *entry.record;
    words += (words == "ON RECORD" ? ": " : "; ") + std::string(name_of(record.stage));
    if (!record.date.empty())
      words += " " + record.date;
    if (record.body)
      words += ", " + (length_words ? length_words(record.body->value) : length_text(record.body->value)) +
               " from bearing to bearing";
  }
  return words + ". Cut no second one";
}

std::string passed_over_words(const Rig& rig, const DerivedStay& stay, const OtherReading& other) {
  switch (other.why) {
  case PassedOver::older:
    return "an older one";
  case PassedOver::counted_out:
    return "another one is stated to count";
  case PassedOver::agrees:
    return "agrees with the one used";
  case PassedOver::contradicts:
    return "CONTRADICTS the one used: no date tells which is later";
  case PassedOver::not_comparable:
    break;
  }
  const bool of_this = rig[stay.stay].readings[other.reading].is_mark_alone();
  return std::string("cannot be compared: ") + (of_this ? "this cord" : "the cord used") + " has no number";
}

} // namespace sheerpole
