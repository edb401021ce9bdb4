#include "calculate/change/stay_inputs.hpp"

#include "calculate/adjust/piece_history.hpp"
#include "calculate/change/line_fate.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
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
    value(of_stay_, input_name("pin-to-pin"), stay_.stated_pin_to_pin);
    for (const PathStop& stop : stay_.path)
      of_stop(stop);
    add(of_stay_, input_name("line"), rig_[stay_.material].name);
    of_thing(rig_[stay_.material]);
    for (const StackItem& item : stay_.stack)
      of_item(item);
    for (const Reading& reading : stay_.readings)
      of_reading(reading);
    const StayId id{static_cast<std::uint32_t>(&stay_ - rig_.stays.data())};
    for (const PieceRecord& record : piece_records_of(rig_, id))
      of_piece(record);
    fields(of_stay_, stay_);
    return std::move(inputs_);
  }

private:
  const Rig& rig_;
  const Stay& stay_;
  const Remark of_stay_ = input_name(stay_.name);
  std::vector<StayInput> inputs_;
  std::string setting_of_; ///< the part whose setting is met

  void add(const Remark& subject, const Remark& property, std::string text) {
    const bool met = std::any_of(inputs_.begin(), inputs_.end(), [&](const StayInput& earlier) {
      return earlier.subject == subject && earlier.property == property;
    });
    if (!text.empty() && !met)
      inputs_.push_back({subject, property, std::move(text), setting_of_});
  }

  template <HasFields Thing>
  void fields(const Remark& subject, const Thing& thing) {
    visit_fields(thing, [&](const auto& field, const auto& member) {
      if (field.role != FieldRole::identity)
        value(subject, property_of(field), member);
    });
  }
  template <class AnyField>
  static Remark property_of(const AnyField& field) {
    return input_name(field.property.empty() ? field.name : field.property);
  }
  template <HasFields Thing>
  void of_thing(const Thing& thing) {
    fields(input_name(thing.name), thing);
  }

  void of_stop(const PathStop& stop) {
    const Point& point = rig_[stop.point];
    of_thing(point);
    if (stop.passage != Passage::end)
      add(of_stay_, {ChangePhrase::passage_at, {Words{point.name}}},
          stop.passage == Passage::free ? "free" : "clamped");
  }
  void of_item(const StackItem& item) {
    if (item.material)
      of_thing(rig_[*item.material]);
    if (item.splice)
      of_thing(rig_[*item.splice]);
    if (item.kind == StackItem::Kind::line) {
      value(of_stay_, ChangePhrase::line_in_stack, item.line_length);
      value(of_stay_, input_name("in-hand"), item.in_hand);
      value(of_stay_, input_name("in-hand-over"), item.in_hand_over);
      value(of_stay_, input_name("stock"), item.stock);
      return;
    }
    const Part& part = rig_[item.part];
    of_thing(part);
    setting_of_ = part.name;
    const auto of_part = [&](const char* property) {
      return Remark(ChangePhrase::of_part, {Words{property}, Words{part.name}});
    };
    add(of_stay_, of_part("count"), item.count > 1 ? std::to_string(item.count) : "");
    value(of_stay_, of_part("setting"), item.set_length);
    value(of_stay_, of_part("passes"), item.passes);
    value(of_stay_, of_part("hole"), item.hole);
    value(of_stay_, {ChangePhrase::spare_bury_of, {Words{part.name}}}, item.spare_bury);
    value(of_stay_, of_part("splice"), item.splice);
    add(of_stay_, of_part("removable"), item.removable ? "yes" : "");
    setting_of_.clear();
  }
  void of_piece(const PieceRecord& record) {
    const Remark subject{ChangePhrase::piece_at_stage,
                         {Words{stay_.name}, Words{std::string(name_of(record.stage))}}};
    visit_fields(record, [&](const auto& field, const auto& member) {
      if (field.role != FieldRole::identity && field.name != "stage")
        value(subject, property_of(field), member);
    });
  }
  void of_reading(const Reading& reading) {
    // How and when it was read is its name, so that a new reading is not taken for the old one changed.
    const Words stay{stay_.name};
    const Words method{std::string(name_of(reading.method))};
    const Remark subject = reading.date.empty()
                               ? Remark(ChangePhrase::reading_by, {stay, method})
                               : Remark(ChangePhrase::reading_by_on, {stay, method, Words{reading.date}});
    visit_fields(reading, [&](const auto& field, const auto& member) {
      if (field.role != FieldRole::identity && field.name != "method" && field.name != "date")
        value(subject, property_of(field), member);
    });
  }

  // Each type of member, as documents print it.
  void value(const Remark& subject, const Remark& property, const std::string& text) {
    add(subject, property, text);
  }
  void value(const Remark& subject, const Remark& property, std::string_view text) {
    add(subject, property, std::string(text));
  }
  template <NamedWord Word>
  void value(const Remark& subject, const Remark& property, Word word) {
    add(subject, property, std::string(name_of(word)));
  }
  void value(const Remark& subject, const Remark& property, bool yes) {
    add(subject, property, yes ? "yes" : "");
  }
  void value(const Remark& subject, const Remark& property, int number) {
    add(subject, property, std::to_string(number));
  }
  void value(const Remark& subject, const Remark& property, double share) {
    add(subject, property, percent_text(share));
  }
  void value(const Remark& subject, const Remark& property, Length length) {
    add(subject, property, length_text(length));
  }
  void value(const Remark& subject, const Remark& property, Force force) {
    add(subject, property, format_number(force.kilonewtons()) + " kN");
  }
  void value(const Remark& subject, const Remark& property, const RopeMeasure& measure) {
    add(subject, property,
        measure.in_diameters ? format_number(measure.amount) + " d"
                             : length_text(Length::metres(measure.amount)));
  }
  void value(const Remark& subject, const Remark& property, const NamedSize& size) {
    add(subject, property, size.name);
  }
  void value(const Remark& subject, const Remark& property, const Construction& made) {
    add(subject, property, made.text);
  }
  void value(const Remark& subject, const Remark&, const Vector3& place) {
    for (const auto& [axis, length] :
         {std::pair("x", place.x), std::pair("y", place.y), std::pair("z", place.z)})
      add(subject, input_name(axis), format_millimetres(length, 1) + " mm");
  }
  void value(const Remark& subject, const Remark&, const Screw& screw) {
    add(subject, input_name("thread"), screw.thread.designation);
    add(subject, input_name("screw"), screw.pair ? "pair" : "single");
  }
  void value(const Remark& subject, const Remark& property, const End& end) {
    const Remarks which{{property}};
    add(subject, {ChangePhrase::end_of_part, {which}}, std::string(name_of(end.type)));
    for (const EndDimension& dimension : end.dimensions)
      add(subject, {ChangePhrase::of_end_of_part, {Words{std::string(name_of(dimension.name))}, which}},
          dimension.text.empty() ? length_text(dimension.length.value) : dimension.text);
  }
  void value(const Remark& subject, const Remark& property, MaterialId id) {
    add(subject, property, rig_[id].name);
  }
  void value(const Remark& subject, const Remark& property, SpliceId id) {
    add(subject, property, rig_[id].name);
  }
  void value(const Remark& subject, const Remark&, const std::vector<Particular>& facts) {
    for (const Particular& fact : facts)
      add(subject, input_name(fact.name), fact.text);
  }
  void value(const Remark& subject, const Remark& property, const std::vector<Sourced<Length>>& runs) {
    std::string text;
    for (const Sourced<Length>& run : runs)
      text += (text.empty() ? "" : ", ") + length_text(run.value);
    add(subject, property, std::move(text));
  }
  void value(const Remark& subject, const Remark& property, const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words)
      text += (text.empty() ? "" : ", ") + word;
    add(subject, property, std::move(text));
  }
  // What a thing is and where it stands is no input of it.
  void value(const Remark&, const Remark&, const Span&) {}
  void value(const Remark&, const Remark&, Side) {}
  void value(const Remark&, const Remark&, LineMaterial::Kind) {}
  void value(const Remark&, const Remark&, Part::Role) {}
  void value(const Remark&, const Remark&, StayId) {}
  void value(const Remark&, const Remark&, PointId) {}
  void value(const Remark&, const Remark&, const Provenance&) {}
  void value(const Remark&, const Remark&, const std::array<Influences, 3>&) {}
  // Met by themselves, each in its turn.
  void value(const Remark&, const Remark&, const std::vector<PathStop>&) {}
  void value(const Remark&, const Remark&, const std::vector<StackItem>&) {}
  void value(const Remark&, const Remark&, const std::vector<Reading>&) {}

  template <class Value>
  void value(const Remark& subject, const Remark& property, const Sourced<Value>& sourced) {
    value(subject, property, sourced.value);
  }
  template <class Value>
  void value(const Remark& subject, const Remark& property, const std::optional<Value>& stated) {
    if (stated)
      value(subject, property, *stated);
  }
};

} // namespace stay_inputs_detail

Remark input_name(std::string_view name) {
  return {ChangePhrase::named, {Words{std::string(name)}}};
}

std::vector<StayInput> stay_inputs(const Rig& rig, const Stay& stay) {
  return stay_inputs_detail::StayInputs(rig, stay).all();
}

bool rests_on(const Rig& rig, const Stay& stay, std::string_view thing) {
  if (thing == stay.name || thing == stay.base)
    return true;
  const std::vector<StayInput> inputs = stay_inputs(rig, stay);
  const auto is_it = [&](std::string_view name) {
    return std::any_of(inputs.begin(), inputs.end(),
                       [&](const StayInput& one) { return one.subject == input_name(name); });
  };
  const std::string both(thing);
  return is_it(thing) || is_it(both + ".port") || is_it(both + ".starboard");
}

} // namespace sheerpole
