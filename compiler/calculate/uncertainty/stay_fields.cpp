#include "calculate/uncertainty/stay_fields.hpp"

#include "calculate/uncertainty/uncertainty_phrases.hpp"

#include <algorithm>
#include <set>
#include <utility>

namespace sheerpole {

namespace {

class Collector {
public:
  explicit Collector(Rig& rig) : rig_(rig) {}

  void add(Remark name, Sourced<Length>& field) {
    put(std::move(name), &field, field.influences, field.tolerance.has_value(), field.value.si(),
        [&field](double si) { field.value = Length::from_si(si); });
  }
  void add(Remark name, std::optional<Sourced<Length>>& field) {
    if (field)
      add(std::move(name), *field);
  }
  void add(Remark name, std::optional<Sourced<double>>& field) {
    if (field)
      put(std::move(name), &*field, field->influences, field->tolerance.has_value(), field->value,
          [&field](double si) { field->value = si; });
  }
  void add(Remark name, Sourced<RopeMeasure>& field) {
    put(std::move(name), &field, field.influences, field.tolerance.has_value(), field.value.amount,
        [&field](double amount) { field.value.amount = amount; });
  }
  void add(Remark name, std::optional<Sourced<RopeMeasure>>& field) {
    if (field)
      add(std::move(name), *field);
  }
  void facts(std::vector<Particular>& facts, const RemarkArgument& owner) {
    for (Particular& fact : facts)
      if (!(fact.value.value.dimension == Dimension{}) || fact.value.value.si != 0.0)
        put({UncertaintyPhrase::property_of, {Words{fact.name}, owner}}, &fact, fact.value.influences,
            fact.value.tolerance.has_value(), fact.value.value.si,
            [&fact](double si) { fact.value.value.si = si; });
  }
  void point(PointId id) {
    Point& point = rig_.points[id.index()];
    Length* const coordinates[] = {&point.position.x, &point.position.y, &point.position.z};
    constexpr UncertaintyPhrase names[] = {UncertaintyPhrase::place_x, UncertaintyPhrase::place_y,
                                           UncertaintyPhrase::place_z};
    for (std::size_t i = 0; i < 3; ++i) {
      Length& coordinate = *coordinates[i];
      const bool bounded = point.tolerance.has_value() || !point.influences[i].empty();
      put({names[i], {Words{point.base}}}, &coordinate, point.influences[i], bounded, coordinate.si(),
          [&coordinate](double si) { coordinate = Length::from_si(si); });
    }
  }
  void material(MaterialId id) {
    LineMaterial& material = rig_.materials[id.index()];
    put({UncertaintyPhrase::diameter_of, {id}}, &material.diameter, material.diameter.influences,
        material.diameter.tolerance.has_value(), material.diameter.value.si(),
        [&material](double si) { material.diameter.value = Length::from_si(si); });
    facts(material.particulars, id);
    for (Record& record : rig_.records)
      if (record.kind == "test-splice" && record.of == material.name)
        facts(record.facts, Remarks{{{UncertaintyPhrase::test_splice_of, {id}}}});
  }
  void part(PartId id) {
    Part& part = rig_.parts[id.index()];
    add({UncertaintyPhrase::length_of, {id}}, part.length);
    add({UncertaintyPhrase::wrap_of, {id}}, part.wrap);
    for (End* end : {&part.upper, &part.lower})
      for (EndDimension& dimension : end->dimensions)
        if (dimension.length.value != Length{}) // else it is a word
          add({UncertaintyPhrase::property_of, {Words{dimension.name}, id}}, dimension.length);
  }
  void splice(SpliceId id) {
    Splice& splice = rig_.splices[id.index()];
    add({UncertaintyPhrase::bury_of, {id}}, splice.bury);
    add({UncertaintyPhrase::eye_allowance_of, {id}}, splice.eye_allowance);
    add({UncertaintyPhrase::tail_to_trim_of, {id}}, splice.tail_to_trim);
    add({UncertaintyPhrase::contraction_of, {id}}, splice.contraction);
    add({UncertaintyPhrase::recovered_of, {id}}, splice.recovered);
  }
  void reading(Reading& reading, StayId stay) {
    std::int64_t number = 0;
    for (Sourced<Length>& run : reading.runs) {
      add({UncertaintyPhrase::run_of, {Count{++number}, stay}}, run);
      if (reading.runs.size() > 1 && !fields_.empty())
        fields_.back().bounded = true; // by the scatter of the others
    }
    add({UncertaintyPhrase::offset_of, {stay}}, reading.offset);
    add({UncertaintyPhrase::hoist_offset_of, {stay}}, reading.hoist_offset);
    facts(reading.particulars, Remarks{{{UncertaintyPhrase::reading_of, {stay}}}});
    if (!reading.tape.empty())
      for (Record& record : rig_.records)
        if (record.kind == "tape" && record.name == reading.tape)
          facts(record.facts, Words{record.name});
    if (reading.old_line)
      material(*reading.old_line);
  }

  std::vector<StayField> take() { return std::move(fields_); }

private:
  void put(Remark name, const void* where, const Influences& influences, bool bounded, double value,
           std::function<void(double)> set) {
    if (!seen_.insert(where).second)
      return;
    const double step = std::max(1e-6, 1e-4 * (value < 0.0 ? -value : value));
    fields_.push_back({std::move(name), &influences, bounded, value, step, std::move(set)});
  }

  Rig& rig_;
  std::vector<StayField> fields_;
  std::set<const void*> seen_;
};

} // namespace

std::vector<StayField> stay_fields(Rig& rig, StayId id) {
  Collector collector(rig);
  Stay& stay = rig.stays[id.index()];
  if (stay.stated_pin_to_pin)
    collector.add({UncertaintyPhrase::pin_to_pin_of, {Words{stay.base}}}, *stay.stated_pin_to_pin);
  for (Reading& reading : stay.readings)
    collector.reading(reading, id);
  for (const PathStop& stop : stay.path)
    collector.point(stop.point);
  collector.material(stay.material);
  for (StackItem& item : stay.stack) {
    if (item.material)
      collector.material(*item.material);
    if (item.line_length)
      collector.add(item.kind == StackItem::Kind::part ? Remark(UncertaintyPhrase::length_of, {item.part})
                                                       : Remark(UncertaintyPhrase::length_of_line),
                    *item.line_length);
    if (item.kind != StackItem::Kind::part)
      continue;
    collector.part(item.part);
    if (item.set_length)
      collector.add({UncertaintyPhrase::setting_of, {item.part}}, *item.set_length);
    if (item.spare_bury)
      collector.add({UncertaintyPhrase::spare_bury_at, {item.part}}, *item.spare_bury);
    if (item.splice)
      collector.splice(*item.splice);
  }
  collector.facts(stay.particulars, Words{stay.base});
  return collector.take();
}

} // namespace sheerpole
