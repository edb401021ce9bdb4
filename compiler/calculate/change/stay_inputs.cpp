#include "calculate/change/stay_inputs.hpp"

#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <array>
#include <set>
#include <string_view>
#include <utility>

namespace sheerpole {

namespace stay_inputs_detail {

/// Meets every field of every thing on which a stay rests, by their tables, so that nothing that is stated
/// is forgotten. A type of member that is not known here does not compile.
class StayInputs {
public:
  StayInputs(const Rig& rig, const Stay& stay) : rig_(rig), stay_(stay) {}

  std::vector<StayInput> all() {
    value(stay_.name, "pin-to-pin", stay_.stated_pin_to_pin);
    for (const PathStop& stop : stay_.path)
      of_stop(stop);
    add(stay_.name, "line", rig_[stay_.material].name);
    of_thing(rig_[stay_.material]);
    for (const StackItem& item : stay_.stack)
      of_item(item);
    for (const Reading& reading : stay_.readings)
      of_reading(reading);
    fields(stay_.name, stay_);
    return std::move(inputs_);
  }

private:
  const Rig& rig_;
  const Stay& stay_;
  std::vector<StayInput> inputs_;
  std::set<std::pair<std::string, std::string>> seen_;
  std::string setting_of_; ///< the part whose setting is met

  void add(const std::string& subject, const std::string& property, std::string text) {
    if (!text.empty() && seen_.emplace(subject, property).second)
      inputs_.push_back({subject, property, std::move(text), setting_of_});
  }

  template <HasFields Thing>
  void fields(const std::string& subject, const Thing& thing) {
    visit_fields(thing, [&](const auto& field, const auto& member) {
      if (field.role != FieldRole::identity)
        value(subject, std::string(field.property.empty() ? field.name : field.property), member);
    });
  }
  template <HasFields Thing>
  void of_thing(const Thing& thing) {
    fields(thing.name, thing);
  }

  void of_stop(const PathStop& stop) {
    const Point& point = rig_[stop.point];
    of_thing(point);
    if (stop.passage != Passage::end)
      add(stay_.name, "passage at " + point.name, stop.passage == Passage::free ? "free" : "clamped");
  }
  void of_item(const StackItem& item) {
    if (item.material)
      of_thing(rig_[*item.material]);
    if (item.splice)
      of_thing(rig_[*item.splice]);
    if (item.kind == StackItem::Kind::line) {
      value(stay_.name, "length of a line in the stack", item.line_length);
      value(stay_.name, "in-hand", item.in_hand);
      value(stay_.name, "in-hand-over", item.in_hand_over);
      value(stay_.name, "stock", item.stock);
      return;
    }
    const Part& part = rig_[item.part];
    of_thing(part);
    setting_of_ = part.name;
    const std::string of = " of " + part.name;
    add(stay_.name, "count" + of, item.count > 1 ? std::to_string(item.count) : "");
    value(stay_.name, "setting" + of, item.set_length);
    value(stay_.name, "passes" + of, item.passes);
    value(stay_.name, "hole" + of, item.hole);
    value(stay_.name, "spare bury" + of, item.spare_bury);
    value(stay_.name, "splice" + of, item.splice);
    add(stay_.name, "removable" + of, item.removable ? "yes" : "");
    setting_of_.clear();
  }
  void of_reading(const Reading& reading) {
    // How and when it was read is its name, so that a new reading is not taken for the old one changed.
    const std::string subject =
        stay_.name + ", reading by " + reading.method + (reading.date.empty() ? "" : " of " + reading.date);
    visit_fields(reading, [&](const auto& field, const auto& member) {
      if (field.role != FieldRole::identity && field.name != "method" && field.name != "date")
        value(subject, std::string(field.property.empty() ? field.name : field.property), member);
    });
  }

  // Each type of member, as documents print it.
  void value(const std::string& subject, const std::string& property, const std::string& text) {
    add(subject, property, text);
  }
  void value(const std::string& subject, const std::string& property, std::string_view text) {
    add(subject, property, std::string(text));
  }
  void value(const std::string& subject, const std::string& property, int number) {
    add(subject, property, std::to_string(number));
  }
  void value(const std::string& subject, const std::string& property, double share) {
    add(subject, property, percent_text(share));
  }
  void value(const std::string& subject, const std::string& property, Length length) {
    add(subject, property, length_text(length));
  }
  void value(const std::string& subject, const std::string& property, Force force) {
    add(subject, property, format_number(force.kilonewtons()) + " kN");
  }
  void value(const std::string& subject, const std::string& property, const RopeMeasure& measure) {
    add(subject, property,
        measure.in_diameters ? format_number(measure.amount) + " d"
                             : length_text(Length::metres(measure.amount)));
  }
  void value(const std::string& subject, const std::string& property, const NamedSize& size) {
    add(subject, property, size.name);
  }
  void value(const std::string& subject, const std::string& property, const Construction& made) {
    add(subject, property, made.text);
  }
  void value(const std::string& subject, const std::string&, const Vector3& place) {
    for (const auto& [axis, length] :
         {std::pair("x", place.x), std::pair("y", place.y), std::pair("z", place.z)})
      add(subject, axis, format_millimetres(length, 1) + " mm");
  }
  void value(const std::string& subject, const std::string&, const Screw& screw) {
    add(subject, "thread", screw.thread.designation);
    add(subject, "screw", screw.pair ? "pair" : "single");
  }
  void value(const std::string& subject, const std::string& property, const End& end) {
    const std::string which = property + " end";
    add(subject, which, std::string(std::string_view(end.type)));
    for (const EndDimension& dimension : end.dimensions)
      add(subject, std::string(dimension.name) + " of the " + which,
          dimension.text.empty() ? length_text(dimension.length.value) : dimension.text);
  }
  void value(const std::string& subject, const std::string& property, MaterialId id) {
    add(subject, property, rig_[id].name);
  }
  void value(const std::string& subject, const std::string& property, SpliceId id) {
    add(subject, property, rig_[id].name);
  }
  void value(const std::string& subject, const std::string&, const std::vector<Particular>& facts) {
    for (const Particular& fact : facts)
      add(subject, std::string(fact.name), fact.text);
  }
  void value(const std::string& subject, const std::string& property,
             const std::vector<Sourced<Length>>& runs) {
    std::string text;
    for (const Sourced<Length>& run : runs)
      text += (text.empty() ? "" : ", ") + length_text(run.value);
    add(subject, property, std::move(text));
  }
  void value(const std::string& subject, const std::string& property,
             const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words)
      text += (text.empty() ? "" : ", ") + word;
    add(subject, property, std::move(text));
  }
  // What a thing is and where it stands is no input of it.
  void value(const std::string&, const std::string&, const Span&) {}
  void value(const std::string&, const std::string&, Side) {}
  void value(const std::string&, const std::string&, LineMaterial::Kind) {}
  void value(const std::string&, const std::string&, Part::Role) {}
  void value(const std::string&, const std::string&, PointId) {}
  void value(const std::string&, const std::string&, const Provenance&) {}
  void value(const std::string&, const std::string&, const std::array<Influences, 3>&) {}
  // Met by themselves, each in its turn.
  void value(const std::string&, const std::string&, const std::vector<PathStop>&) {}
  void value(const std::string&, const std::string&, const std::vector<StackItem>&) {}
  void value(const std::string&, const std::string&, const std::vector<Reading>&) {}

  template <class Value>
  void value(const std::string& subject, const std::string& property, const Sourced<Value>& sourced) {
    value(subject, property, sourced.value);
  }
  template <class Value>
  void value(const std::string& subject, const std::string& property, const std::optional<Value>& stated) {
    if (stated)
      value(subject, property, *stated);
  }
};

} // namespace stay_inputs_detail

std::vector<StayInput> stay_inputs(const Rig& rig, const Stay& stay) {
  return stay_inputs_detail::StayInputs(rig, stay).all();
}

} // namespace sheerpole
