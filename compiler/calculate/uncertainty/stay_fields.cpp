#include "calculate/uncertainty/stay_fields.hpp"

#include <algorithm>
#include <set>
#include <utility>

namespace sheerpole {

namespace {

class Collector {
public:
  explicit Collector(Rig& rig) : rig_(rig) {}

  void add(std::string name, Sourced<Length>& field) {
    put(std::move(name), &field, field.influences, field.tolerance.has_value(), field.value.si(),
        [&field](double si) { field.value = Length::from_si(si); });
  }
  void add(std::string name, std::optional<Sourced<Length>>& field) {
    if (field)
      add(std::move(name), *field);
  }
  void add(std::string name, std::optional<Sourced<double>>& field) {
    if (field)
      put(std::move(name), &*field, field->influences, field->tolerance.has_value(), field->value,
          [&field](double si) { field->value = si; });
  }
  void add(std::string name, Sourced<RopeMeasure>& field) {
    put(std::move(name), &field, field.influences, field.tolerance.has_value(), field.value.amount,
        [&field](double amount) { field.value.amount = amount; });
  }
  void add(std::string name, std::optional<Sourced<RopeMeasure>>& field) {
    if (field)
      add(std::move(name), *field);
  }
  void facts(std::vector<Particular>& facts, const std::string& owner) {
    for (Particular& fact : facts)
      if (!(fact.value.value.dimension == Dimension{}) || fact.value.value.si != 0.0)
        put(fact.name + " of " + owner, &fact, fact.value.influences, fact.value.tolerance.has_value(),
            fact.value.value.si, [&fact](double si) { fact.value.value.si = si; });
  }
  void point(PointId id) {
    Point& point = rig_.points[id.index()];
    Length* const coordinates[] = {&point.position.x, &point.position.y, &point.position.z};
    constexpr const char* names[] = {"x of the place of ", "y of the place of ", "z of the place of "};
    for (std::size_t i = 0; i < 3; ++i) {
      Length& coordinate = *coordinates[i];
      const bool bounded = point.tolerance.has_value() || !point.influences[i].empty();
      put(names[i] + point.base, &coordinate, point.influences[i], bounded, coordinate.si(),
          [&coordinate](double si) { coordinate = Length::from_si(si); });
    }
  }
  void material(MaterialId id) {
    LineMaterial& material = rig_.materials[id.index()];
    put("diameter of " + material.name, &material.diameter, material.diameter.influences,
        material.diameter.tolerance.has_value(), material.diameter.value.si(),
        [&material](double si) { material.diameter.value = Length::from_si(si); });
    facts(material.particulars, material.name);
    for (Record& record : rig_.records)
      if (record.kind == "test-splice" && record.of == material.name)
        facts(record.facts, "the test splice of " + material.name);
  }
  void part(PartId id) {
    Part& part = rig_.parts[id.index()];
    add("length of " + part.name, part.length);
    add("wrap of " + part.name, part.wrap);
    for (End* end : {&part.upper, &part.lower})
      for (EndDimension& dimension : end->dimensions)
        if (dimension.length.value != Length{}) // else it is a word
          add(dimension.name + " of " + part.name, dimension.length);
  }
  void splice(SpliceId id) {
    Splice& splice = rig_.splices[id.index()];
    add("bury of " + splice.name, splice.bury);
    add("eye allowance of " + splice.name, splice.eye_allowance);
    add("tail to trim of " + splice.name, splice.tail_to_trim);
    add("contraction of " + splice.name, splice.contraction);
    add("recovered of " + splice.name, splice.recovered);
  }
  void reading(Reading& reading, const std::string& stay) {
    const std::string owner = "the reading of " + stay;
    std::size_t number = 0;
    for (Sourced<Length>& run : reading.runs) {
      add("run " + std::to_string(++number) + " of " + owner, run);
      if (reading.runs.size() > 1 && !fields_.empty())
        fields_.back().bounded = true; // by the scatter of the others
    }
    add("offset of " + owner, reading.offset);
    add("hoist offset of " + owner, reading.hoist_offset);
    facts(reading.particulars, owner);
    if (!reading.tape.empty())
      for (Record& record : rig_.records)
        if (record.kind == "tape" && record.name == reading.tape)
          facts(record.facts, record.name);
    if (reading.old_line)
      material(*reading.old_line);
  }

  std::vector<StayField> take() { return std::move(fields_); }

private:
  void put(std::string name, const void* where, const Influences& influences, bool bounded, double value,
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
    collector.add("pin-to-pin of " + stay.base, *stay.stated_pin_to_pin);
  for (Reading& reading : stay.readings)
    collector.reading(reading, stay.name);
  for (const PathStop& stop : stay.path)
    collector.point(stop.point);
  collector.material(stay.material);
  for (StackItem& item : stay.stack) {
    const std::string what = item.kind == StackItem::Kind::part ? rig[item.part].name : "the line";
    if (item.material)
      collector.material(*item.material);
    if (item.line_length)
      collector.add("length of " + what, *item.line_length);
    if (item.kind != StackItem::Kind::part)
      continue;
    collector.part(item.part);
    if (item.set_length)
      collector.add("setting of " + what, *item.set_length);
    if (item.spare_bury)
      collector.add("spare bury at " + what, *item.spare_bury);
    if (item.splice)
      collector.splice(*item.splice);
  }
  collector.facts(stay.particulars, stay.base);
  return collector.take();
}

} // namespace sheerpole
