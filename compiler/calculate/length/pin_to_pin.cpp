#include "calculate/length/pin_to_pin.hpp"

#include "calculate/length/length_sum.hpp"
#include "calculate/length/path_length.hpp"
#include "calculate/reading/reading_length.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

struct LengthWay {
  LengthRoute route;
  LengthSum sum;
  std::vector<Remark> not_corrected = {};
};

LengthSum pin_to_pin_sum(std::vector<Term> terms) {
  return {SumKind::pin_to_pin, false, std::move(terms), {}};
}

/// Every way that gives a number; each later reading wins over the earlier ones, then come stated and path.
std::vector<LengthWay> ways_to(const Rig& rig, const Stay& stay) {
  std::vector<LengthWay> readings;
  for (const Reading& reading : stay.readings)
    if (!reading.runs.empty()) {
      ReadingLength length = reading_length(rig, stay, reading);
      readings.push_back(
          {LengthRoute::reading, pin_to_pin_sum(std::move(length.terms)), std::move(length.not_corrected)});
    }
  std::vector<LengthWay> ways;
  if (!readings.empty()) {
    ways.push_back(std::move(readings.back()));
    readings.pop_back();
    std::move(readings.begin(), readings.end(), std::back_inserter(ways));
  }
  if (stay.stated_pin_to_pin)
    ways.push_back(
        {LengthRoute::stated, pin_to_pin_sum({{TermKind::pins_as_stated, stay.stated_pin_to_pin->value,
                                               stay.stated_pin_to_pin->provenance}})});
  if (auto path = path_length(rig, stay))
    ways.push_back({LengthRoute::path, std::move(*path)});
  return ways;
}

/// Where X lies: "cord orange, 4 knots", "mark on the messenger: red whipping".
Remark where_x_lies(const Reading& reading) {
  if (reading.cord.empty())
    return {Derivation::mark_on,
            {Words{reading.method == ReadingMethod::unstated ? "cord" : std::string(name_of(reading.method))},
             Words{reading.mark}}};
  Remark where(Derivation::on_cord, {Words{reading.cord}});
  if (reading.knots)
    where = *reading.knots == 1
                ? Remark(Derivation::on_cord_at_one_knot, {Words{reading.cord}})
                : Remark(Derivation::on_cord_at_knots, {Words{reading.cord}, Count{*reading.knots}});
  return reading.mark.empty() ? where
                              : Remark(Derivation::with_mark, {Remarks{{where}}, Words{reading.mark}});
}

/// X, with the knot or mark of the last reading that has one. What that reading states beside it belongs to
/// the mark.
LengthSum unknown_length(const Stay& stay) {
  LengthSum sum = pin_to_pin_sum({});
  sum.unknown = true;
  sum.unknown_source.derivation = Derivation::no_number_yet;
  for (const Reading& reading : stay.readings) {
    if (!reading.on_cord())
      continue;
    sum.terms.clear();
    sum.unknown_source.source_class = SourceClass::measured;
    sum.unknown_source.derivation = where_x_lies(reading);
    sum.unknown_source.place = reading.place;
    if (reading.offset)
      sum.terms.push_back(offset_term(reading));
    if (reading.hoist_offset)
      sum.terms.push_back(
          {TermKind::hoist_offset, reading.hoist_offset->value, reading.hoist_offset->provenance});
    if (reading.below_knot)
      sum.terms.push_back(
          {TermKind::below_knot, reading.below_knot->value, reading.below_knot->provenance});
    if (reading.shift != Length{})
      sum.terms.push_back({TermKind::knot, reading.shift, sum.unknown_source});
  }
  return sum;
}

} // namespace

PinToPin pin_to_pin(const Rig& rig, const Stay& stay) {
  std::vector<LengthWay> ways = ways_to(rig, stay);
  if (ways.empty())
    return {LengthRoute::unknown, unknown_length(stay), {}, cord_not_counted(rig, stay)};
  PinToPin result{
      ways.front().route, std::move(ways.front().sum), {}, std::move(ways.front().not_corrected)};
  for (std::size_t i = 1; i < ways.size(); ++i)
    result.other_routes.push_back({ways[i].route,
                                   ways[i].sum.known(),
                                   result.sum.known() - ways[i].sum.known(),
                                   provenance_of(ways[i].sum),
                                   {}});
  return result;
}

} // namespace sheerpole
