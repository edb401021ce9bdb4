#include "rules/assumed_places.hpp"

namespace sheerpole {

namespace {

/// Meets every provenance of a rig once.
class Collector {
public:
  void meet(const Provenance& provenance) {
    if (!provenance.place)
      return;
    const bool itself =
        provenance.source_class == SourceClass::assumed && provenance.assumptions.size() == 1;
    for (const std::string& name : provenance.assumptions)
      (itself ? own_ : standing_in_).emplace(name, *provenance.place);
  }
  template <class Value>
  void meet(const Sourced<Value>& value) {
    meet(value.provenance);
  }
  template <class Value>
  void meet(const std::optional<Value>& value) {
    if (value)
      meet(*value);
  }
  void meet(const std::vector<Particular>& facts) {
    for (const Particular& fact : facts)
      meet(fact.value);
  }
  void meet(const End& end) {
    for (const EndDimension& dimension : end.dimensions)
      meet(dimension.length);
  }
  void meet(const LineMaterial& material) {
    meet(material.diameter);
    meet(material.break_load);
    meet(material.particulars);
  }
  void meet(const Splice& splice) {
    meet(splice.bury);
    meet(splice.eye_allowance);
    meet(splice.tail_to_trim);
    meet(splice.contraction);
    meet(splice.recovered);
  }
  void meet(const Part& part) {
    meet(part.length);
    meet(part.shortest);
    meet(part.longest);
    if (part.screw)
      meet(part.screw->provenance);
    meet(part.engaged_at_longest);
    meet(part.upper);
    meet(part.lower);
    meet(part.wrap);
  }
  void meet(const Stay& stay) {
    meet(stay.stated_pin_to_pin);
    meet(stay.particulars);
    for (const Reading& reading : stay.readings) {
      for (const Sourced<Length>& run : reading.runs)
        meet(run);
      meet(reading.offset);
      meet(reading.hoist_offset);
      meet(reading.particulars);
    }
    for (const StackItem& item : stay.stack) {
      meet(item.open);
      meet(item.set_length);
      meet(item.spare_bury);
      meet(item.line_length);
    }
  }

  std::map<std::string, Span> places() const {
    std::map<std::string, Span> result = own_;
    result.insert(standing_in_.begin(), standing_in_.end());
    return result;
  }

private:
  std::map<std::string, Span> own_;
  std::map<std::string, Span> standing_in_;
};

} // namespace

std::map<std::string, Span> assumed_places(const Rig& rig) {
  Collector collector;
  for (const Point& point : rig.points)
    collector.meet(point.provenance);
  for (const LineMaterial& material : rig.materials)
    collector.meet(material);
  for (const Splice& splice : rig.splices)
    collector.meet(splice);
  for (const Part& part : rig.parts)
    collector.meet(part);
  for (const Stay& stay : rig.stays)
    collector.meet(stay);
  for (const Record& record : rig.records)
    collector.meet(record.facts);
  return collector.places();
}

} // namespace sheerpole
