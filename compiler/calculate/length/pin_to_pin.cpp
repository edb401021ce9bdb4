#include "calculate/length/pin_to_pin.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "calculate/length/path_length.hpp"
#include "calculate/reading/reading_length.hpp"
#include "model/fact_name.hpp"

#include <utility>

namespace sheerpole {

namespace {

struct LengthWay {
  LengthRoute route;
  LengthSum sum;
  std::vector<Remark> not_corrected = {};
  std::optional<PassedOver> why = {};
};

LengthSum pin_to_pin_sum(std::vector<Term> terms) {
  return {SumKind::pin_to_pin, false, std::move(terms), {}};
}

/// The other readings that have a number, then what is stated, then the points.
std::vector<LengthWay> other_ways(const Rig& rig, const Stay& stay, const ReadingChoice& choice) {
  std::vector<LengthWay> ways;
  for (const OtherReading& other : choice.others) {
    const Reading& reading = stay.readings[other.reading];
    if (!reading.is_mark_alone())
      ways.push_back(
          {LengthRoute::reading, pin_to_pin_sum(reading_length(rig, stay, reading).terms), {}, other.why});
  }
  if (stay.stated_pin_to_pin)
    ways.push_back(
        {LengthRoute::stated, pin_to_pin_sum({{TermKind::pins_as_stated, stay.stated_pin_to_pin->value,
                                               stay.stated_pin_to_pin->provenance}})});
  if (auto path = path_length(rig, stay))
    ways.push_back({LengthRoute::path, std::move(*path)});
  return ways;
}

/// What the reading that counts comes to: a number, or X with what its offsets add.
LengthWay way_of(const Rig& rig, const Stay& stay, const Reading& reading) {
  ReadingLength length = reading_length(rig, stay, reading);
  LengthWay way{LengthRoute::reading, pin_to_pin_sum(std::move(length.terms)),
                std::move(length.not_corrected)};
  if (!reading.is_mark_alone())
    return way;
  way.route = LengthRoute::unknown;
  way.sum.unknown = true;
  way.sum.unknown_source.source_class = SourceClass::measured;
  way.sum.unknown_source.derivation = where_x_lies(reading);
  way.sum.unknown_source.place = reading.place;
  if (reading.shift != Length{})
    way.sum.terms.push_back({TermKind::knot, reading.shift, way.sum.unknown_source});
  return way;
}

/// X that exists nowhere yet.
LengthWay no_way() {
  LengthWay way{LengthRoute::unknown, pin_to_pin_sum({})};
  way.sum.unknown = true;
  way.sum.unknown_source.derivation = Derivation::no_number_yet;
  return way;
}

RouteComparison compare(const LengthSum& taken, const LengthWay& other) {
  RouteComparison result{other.route, other.sum.known(), {}, provenance_of(other.sum)};
  result.why = other.why;
  if (taken.unknown)
    result.expected_x = result.length - taken.known();
  else
    result.difference = taken.known() - result.length;
  return result;
}

} // namespace

PinToPin pin_to_pin(const Rig& rig, const Stay& stay) {
  PinToPin result;
  result.readings = choose_reading(rig, stay);
  std::vector<LengthWay> ways = other_ways(rig, stay, result.readings);
  LengthWay taken = no_way();
  if (result.readings.taken) {
    taken = way_of(rig, stay, stay.readings[*result.readings.taken]);
  } else if (!ways.empty()) {
    taken = std::move(ways.front());
    ways.erase(ways.begin());
  }
  result.route = taken.route;
  result.sum = std::move(taken.sum);
  result.not_corrected = std::move(taken.not_corrected);
  for (const LengthWay& way : ways)
    result.other_routes.push_back(compare(result.sum, way));
  return result;
}

std::optional<Sourced<Length>> expected_pin_to_pin(const Rig& rig, const Stay& stay) {
  if (auto estimate = fact_length(stay.particulars, fact_names.estimate))
    return estimate;
  const std::vector<LengthWay> ways = other_ways(rig, stay, choose_reading(rig, stay));
  if (ways.empty())
    return std::nullopt;
  return Sourced<Length>{ways.front().sum.known(), provenance_of(ways.front().sum), {}};
}

} // namespace sheerpole
