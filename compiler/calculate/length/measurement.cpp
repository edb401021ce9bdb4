#include "calculate/length/measurement.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "calculate/reading/reading_length.hpp"
#include "model/fact_name.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

bool measured(const Provenance& provenance) {
  return provenance.source_class == SourceClass::measured;
}

bool measured_points(const Rig& rig, const Stay& stay) {
  return stay.path.size() > 1 && std::all_of(stay.path.begin(), stay.path.end(), [&](const PathStop& stop) {
           return measured(rig[stop.point].provenance);
         });
}

bool measured_way(const Rig& rig, const Stay& stay, const RouteComparison& other) {
  return other.other == LengthRoute::path ? measured_points(rig, stay) : measured(other.provenance);
}

MeasuredBy measured_by(const Rig& rig, const Stay& stay, const PinToPin& length) {
  if (length.readings.taken)
    return is_assumed(stay.readings[*length.readings.taken]) ? MeasuredBy::nothing : MeasuredBy::reading;
  if (length.route == LengthRoute::stated && measured(stay.stated_pin_to_pin->provenance))
    return MeasuredBy::statement;
  if (length.route == LengthRoute::path && measured_points(rig, stay))
    return MeasuredBy::points;
  return MeasuredBy::nothing;
}

/// Of the runs in place. A cord that is measured twice on the bench was hoisted once all the same.
std::optional<Length> spread_of(const Reading& reading) {
  if (reading.runs.size() < 2)
    return std::nullopt;
  const auto [shortest, longest] =
      std::minmax_element(reading.runs.begin(), reading.runs.end(),
                          [](const auto& a, const auto& b) { return a.value < b.value; });
  return longest->value - shortest->value;
}

/// The nearest of all that agree; nothing when none does.
class Agreement {
public:
  explicit Agreement(Length allowed) : allowed_(allowed) {}

  void consider(ConfirmedBy by, std::optional<std::size_t> reading, Length apart) {
    const Length within = magnitude(apart);
    if (within > allowed_ + rounding_of_sums || (nearest_ && *nearest_->within <= within))
      return;
    nearest_ = Confirmation{by, reading, within};
  }
  const std::optional<Confirmation>& nearest() const { return nearest_; }

private:
  Length allowed_;
  std::optional<Confirmation> nearest_;
};

/// Two cords have no number to compare: what counts is that the second came to the mark of the first, and
/// that what lies between the mark and the pins is the same.
std::optional<Confirmation> same_mark(const Rig& rig, const Stay& stay, const ReadingChoice& choice) {
  const Reading& taken = stay.readings[*choice.taken];
  for (const OtherReading& other : choice.others)
    if (const Reading& again = stay.readings[other.reading];
        again.is_mark_alone() && again.same_mark(taken) && !word_for_word(again, taken) && other.apart &&
        magnitude(*other.apart) <= routes_apart(rig) + rounding_of_sums)
      return Confirmation{ConfirmedBy::reading, other.reading, {}};
  return std::nullopt;
}

std::optional<Confirmation> confirmation(const Rig& rig, const Stay& stay, const PinToPin& length) {
  if (length.sum.unknown)
    return length.readings.taken ? same_mark(rig, stay, length.readings) : std::nullopt;
  Agreement agreement(routes_apart(rig));
  if (length.readings.taken)
    if (const auto spread = spread_of(stay.readings[*length.readings.taken]))
      agreement.consider(ConfirmedBy::second_run, length.readings.taken, *spread);
  for (const OtherReading& other : length.readings.others)
    if (other.apart && !word_for_word(stay.readings[other.reading], stay.readings[*length.readings.taken]))
      agreement.consider(ConfirmedBy::reading, other.reading, *other.apart);
  for (const RouteComparison& other : length.other_routes) {
    if (other.other == LengthRoute::stated && measured_way(rig, stay, other))
      agreement.consider(ConfirmedBy::statement, {}, other.difference);
    if (other.other == LengthRoute::path && measured_way(rig, stay, other))
      agreement.consider(ConfirmedBy::points, {}, other.difference);
  }
  return agreement.nearest();
}

std::vector<Dispute> disputes(const Rig& rig, const Stay& stay, const PinToPin& length) {
  std::vector<Dispute> found;
  for (const RouteComparison& other : length.other_routes)
    if (ways_differ(rig, other))
      found.push_back({other.other, other.difference, measured_way(rig, stay, other)});
  return found;
}

/// The reason for cutting from the drawing; nothing where neither stay nor boat gives leave.
std::optional<std::string> from_drawing(const Rig& rig, const Stay& stay) {
  for (const std::vector<Particular>* facts : {&stay.particulars, &rig.boat.particulars})
    if (find_fact(*facts, fact_names.cut_from) != nullptr)
      return fact_text(*facts, fact_names.cut_from_reason);
  return std::nullopt;
}

} // namespace

Measurement measurement_of(const Rig& rig, const Stay& stay, const PinToPin& length) {
  Measurement result;
  result.by = measured_by(rig, stay, length);
  result.disputes = disputes(rig, stay, length);
  if (result.in_place())
    result.confirmed = confirmation(rig, stay, length);
  else
    result.from_drawing = from_drawing(rig, stay);
  return result;
}

} // namespace sheerpole
