#include "wording/state_words.hpp"

#include "calculate/adjust/piece_history.hpp"
#include "calculate/reading/reading_length.hpp"
#include "model/kind_words.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/papers/rig_words.hpp"
#include "wording/say.hpp"

#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

/// "the cord", "tape"; of a reading that does not say how, "a reading".
std::string method_words(const Reading& reading) {
  if (reading.method == ReadingMethod::messenger)
    return say(RigPhrase::the_cord);
  if (reading.method == ReadingMethod::old_stay)
    return say(RigPhrase::the_old_stay);
  if (reading.method != ReadingMethod::unstated)
    return std::string(name_of(reading.method));
  return reading.is_mark_alone() ? say(RigPhrase::the_cord) : say(RigPhrase::a_reading);
}

/// Whole millimetres, up: what agrees to 1.5 mm agrees to 2 mm and not to 1.
std::string whole_up(Length length) {
  return format_millimetres(Length::millimetres(std::ceil((length - rounding_of_sums).millimetres())), 0);
}

/// "the stated length gives 90 mm less": what the other ways say of a length that was taken. Empty when
/// none differs.
std::string dispute_words(const Measurement& measurement,
                          const std::function<std::string(Length)>& length_words) {
  std::string words;
  if (!measurement.ways_differ())
    return words;
  for (const Dispute& dispute : measurement.disputes) {
    const Length apart = magnitude(dispute.difference);
    words += words.empty() ? "" : "; ";
    words +=
        say(dispute.way == LengthRoute::path ? RigPhrase::its_points_give : RigPhrase::stated_length_gives,
            length_words ? length_words(apart) : whole_up(apart) + " mm",
            say(dispute.difference < Length{} ? RigPhrase::more : RigPhrase::less));
  }
  return words;
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
    return say(RigPhrase::as_stated);
  case MeasuredBy::points:
    return say(RigPhrase::by_measured_points);
  case MeasuredBy::reading:
    break;
  }
  // A stay put together without its readings says no more than that there was one.
  if (!stay.readings.taken)
    return say(RigPhrase::in_place);
  const Reading& reading = rig[stay.stay].readings[*stay.readings.taken];
  return with_day(say(RigPhrase::by, method_words(reading)), reading);
}

std::string confirmed_words(const Rig& rig, const DerivedStay& stay,
                            const std::function<std::string(Length)>& length_words) {
  const auto& found = stay.measurement.confirmed;
  if (!found)
    return {};
  std::string to;
  if (found->within)
    to = say(RigPhrase::to_behind,
             (length_words ? length_words(*found->within) : whole_up(*found->within) + " mm"));
  switch (found->by) {
  case ConfirmedBy::second_run:
    return say(RigPhrase::confirmed_by_second_run, to);
  case ConfirmedBy::statement:
    return say(RigPhrase::confirmed_by_stated_length, to);
  case ConfirmedBy::points:
    return say(RigPhrase::confirmed_by_measured_points, to);
  case ConfirmedBy::dry_fit: {
    const FoundHang* hung = stay.hoisted_fit ? stay.hoisted_fit->latest() : nullptr;
    return say(RigPhrase::confirmed_by_dry_fit,
               (hung == nullptr || hung->date.empty() ? "" : say(RigPhrase::of, hung->date)), to);
  }
  case ConfirmedBy::reading:
    break;
  }
  const Reading& reading = rig[stay.stay].readings[*found->reading];
  if (!found->within)
    return say(RigPhrase::confirmed_cord_came_to_same,
               (reading.date.empty() ? "" : say(RigPhrase::on, reading.date)));
  return say(RigPhrase::confirmed_by, with_day(method_words(reading), reading),
             (reading.date.empty() ? "" : ","), to);
}

std::string state_words(const Rig& rig, const DerivedStay& stay, PieceState state, bool own_length,
                        const std::function<std::string(Length)>& length_words) {
  const std::string by = measured_words(rig, stay);
  const std::string differs = dispute_words(stay.measurement, length_words);
  switch (state) {
  case PieceState::not_measured:
    if (stay.measurement.from_drawing)
      return say(RigPhrase::from_drawing_not_measured_in) + *stay.measurement.from_drawing +
             (differs.empty() ? "" : "; " + differs);
    return say(RigPhrase::not_measured_nothing_was_read);
  case PieceState::not_yet:
    return say(RigPhrase::not_yet_this_is_draft,
               (stay.measurement.from_drawing
                    ? say(RigPhrase::from_drawing) + *stay.measurement.from_drawing
                    : ""));
  case PieceState::on_record:
    return say(RigPhrase::on_record_cut_no_second);
  case PieceState::measured_once:
    return differs.empty() ? say(RigPhrase::measured_once_measure_again_before, by)
                           : say(RigPhrase::ways_differ_measure_again, by, differs);
  case PieceState::ways_differ:
    return say(RigPhrase::ways_differ_find_out_why, by, confirmed_words(rig, stay, length_words), differs);
  case PieceState::ready:
    break;
  }
  if (own_length)
    return say(RigPhrase::ready_length_its_own_as);
  return say(RigPhrase::ready_measured, by, confirmed_words(rig, stay, length_words));
}

std::string record_words(const Rig& rig, const DerivedStay& stay, std::size_t piece,
                         const std::function<std::string(Length)>& length_words) {
  const PieceHistory history = piece_history(rig, stay, piece);
  std::string words = say(RigPhrase::on_record);
  const char* before = ": ";
  for (const PieceEntry& entry : history.entries) {
    const PieceRecord& record = *entry.record;
    words += std::exchange(before, "; ") + std::string(name_of(record.stage));
    if (!record.date.empty())
      words += " " + record.date;
    if (record.body)
      words += say(RigPhrase::from_bearing_to_bearing,
                   (length_words ? length_words(record.body->value) : length_text(record.body->value)));
  }
  return say(RigPhrase::cut_no_second_one, words);
}

std::string passed_over_words(const Rig& rig, const DerivedStay& stay, const OtherReading& other) {
  switch (other.why) {
  case PassedOver::older:
    return say(RigPhrase::an_older_one);
  case PassedOver::counted_out:
    return say(RigPhrase::another_one_is_stated_to);
  case PassedOver::agrees:
    return say(RigPhrase::agrees_with_one_used);
  case PassedOver::contradicts:
    return say(RigPhrase::contradicts_one_used_no_date);
  case PassedOver::not_comparable:
    break;
  }
  const bool of_this = rig[stay.stay].readings[other.reading].is_mark_alone();
  return say(RigPhrase::cannot_be_compared_has_no,
             (of_this ? say(RigPhrase::this_cord) : say(RigPhrase::the_cord_used)));
}

} // namespace sheerpole
