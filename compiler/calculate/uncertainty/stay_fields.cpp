#include "calculate/uncertainty/rig_uncertainty.hpp"

#include "calculate/uncertainty/uncertainty_phrases.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <concepts>
#include <cstdint>
#include <initializer_list>
#include <set>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

namespace sheerpole::stay_fields_detail {
namespace {

/// What is never off by a bound: words, counts, choices, places in the file, sizes that are names, and what
/// other members of the same thing carry the bounds of. A member of any other type that the collector does
/// not know does not compile.
template <class Member>
constexpr bool has_no_bound = std::is_enum_v<Member> ||
                              (std::same_as<Member, bool> || std::same_as<Member, int> ||
                               std::same_as<Member, std::optional<int>> ||
                               std::same_as<Member, std::string> ||
                               std::same_as<Member, std::vector<std::string>> ||
                               std::same_as<Member, std::vector<StayId>> || std::same_as<Member, Span> ||
                               std::same_as<Member, NamedSize> || std::same_as<Member, Construction> ||
                               std::same_as<Member, std::optional<Screw>> || std::same_as<Member, Length>);

double si_of(double value) {
  return value;
}
double si_of(const RopeMeasure& measure) {
  return measure.amount;
}
double si_of(const Quantity& quantity) {
  return quantity.si;
}
template <class Value>
double si_of(const Value& value) {
  return value.si();
}

void set_si(double& value, double si) {
  value = si;
}
void set_si(RopeMeasure& measure, double amount) {
  measure.amount = amount;
}
void set_si(Quantity& quantity, double si) {
  quantity.si = si;
}
template <class Value>
void set_si(Value& value, double si) {
  value = Value::from_si(si);
}

/// What a field is called: member and property.
struct FieldName {
  std::string_view member;
  std::string_view property;
};

/// Walks the members of whatever a stay is made of, by the tables of the model: each that moves a length,
/// or may, is met.
class Collector {
public:
  explicit Collector(Rig& rig) : rig_(rig) {}

  // Inputs are numbered in the order in which they are met, and their numbers choose their random numbers.
  // So the order of what is named here is kept, whatever members a type gets.

  void stay(StayId id) {
    Stay& stay = rig_.stays[id.index()];
    stay_ = id;
    visit(stay, Words{stay.base}, {"stated_pin_to_pin", "readings", "path", "material", "stack"});
  }

  std::vector<StayField> take() { return std::move(fields_); }

private:
  template <class Object>
  void visit(Object& object, const RemarkArgument& owner,
             std::initializer_list<std::string_view> first = {}) {
    const auto meet = [&](const auto& field, auto& member) {
      if (field.role == FieldRole::geometry)
        look(FieldName{field.name, field.property}, member, owner);
    };
    for (const std::string_view name : first)
      visit_fields(object, [&](const auto& field, auto& member) {
        if (field.name == name)
          meet(field, member);
      });
    visit_fields(object, [&](const auto& field, auto& member) {
      if (std::find(first.begin(), first.end(), field.name) == first.end())
        meet(field, member);
    });
  }

  /// "bury of long-bury"
  static Remark named(const FieldName& field, const RemarkArgument& owner) {
    constexpr std::pair<std::string_view, UncertaintyPhrase> own_words[] = {
        {"eye_allowance", UncertaintyPhrase::eye_allowance_of},
        {"tail_to_trim", UncertaintyPhrase::tail_to_trim_of},
        {"hoist_offset", UncertaintyPhrase::hoist_offset_of},
        {"set_length", UncertaintyPhrase::setting_of},
        {"spare_bury", UncertaintyPhrase::spare_bury_at},
    };
    for (const auto& [member, phrase] : own_words)
      if (member == field.member)
        return {phrase, {owner}};
    return {UncertaintyPhrase::property_of, {Words{std::string(field.property)}, owner}};
  }

  template <class Member>
  void look(const FieldName& field, Member& member, const RemarkArgument& /*owner*/) {
    static_assert(has_no_bound<Member>, "whether this can be off is to be said");
    if constexpr (std::same_as<Member, std::string>)
      if (field.member == "tape") // the reading names the record of its tape
        for (Record& record : rig_.records)
          if (record.kind == RecordKind::tape && record.name == member)
            visit(record, Words{record.name});
  }
  template <class Value>
  void look(const FieldName& field, Sourced<Value>& member, const RemarkArgument& owner) {
    put(named(field, owner), member);
  }
  template <class Member>
  requires(!has_no_bound<std::optional<Member>>) void look(const FieldName& field,
                                                           std::optional<Member>& member,
                                                           const RemarkArgument& owner) {
    if (member)
      look(field, *member, owner);
  }
  /// The runs of a reading; one of several is bounded by the scatter of the others.
  void look(const FieldName& /*field*/, std::vector<Sourced<Length>>& runs, const RemarkArgument& owner) {
    std::int64_t number = 0;
    for (Sourced<Length>& run : runs) {
      put({UncertaintyPhrase::run_of, {Count{++number}, owner}}, run);
      if (runs.size() > 1 && !fields_.empty())
        fields_.back().bounded = true;
    }
  }
  void look(const FieldName& /*field*/, std::vector<Particular>& facts, const RemarkArgument& owner) {
    for (Particular& fact : facts) {
      const auto add = [&](Sourced<Quantity>& value) {
        if (!(value.value.dimension == Dimension{}) || value.value.si != 0.0) // else it is a word
          put({UncertaintyPhrase::property_of, {Words{fact.name}, owner}}, value);
      };
      add(fact.value);
      for (Sourced<Quantity>& value : fact.values)
        add(value);
    }
  }
  void look(const FieldName& /*field*/, End& end, const RemarkArgument& owner) {
    for (EndDimension& dimension : end.dimensions)
      if (dimension.length.value != Length{}) // else it is a word
        put({UncertaintyPhrase::property_of, {Words{std::string(name_of(dimension.name))}, owner}},
            dimension.length);
  }
  void look(const FieldName& /*field*/, std::vector<Reading>& readings, const RemarkArgument& /*owner*/) {
    for (Reading& reading : readings)
      visit(reading, Remarks{{{UncertaintyPhrase::reading_of, {stay_}}}},
            {"runs", "offset", "hoist_offset", "particulars"});
  }
  void look(const FieldName& /*field*/, std::vector<PathStop>& path, const RemarkArgument& owner) {
    for (PathStop& stop : path)
      visit(stop, owner);
  }
  void look(const FieldName& /*field*/, std::vector<StackItem>& stack, const RemarkArgument& /*owner*/) {
    for (StackItem& item : stack) {
      is_line_ = item.kind == StackItem::Kind::line;
      visit(item,
            is_line_ ? RemarkArgument(Remarks{{UncertaintyPhrase::the_line}}) : RemarkArgument(item.part),
            {"material", "line_length", "part", "set_length", "spare_bury"});
    }
  }
  void look(const FieldName& /*field*/, PartId& id, const RemarkArgument& /*owner*/) {
    if (!is_line_) // the line between the parts names none
      visit(rig_.parts[id.index()], id, {"length", "wrap", "upper", "lower"});
  }
  void look(const FieldName& /*field*/, SpliceId& id, const RemarkArgument& /*owner*/) {
    visit(rig_.splices[id.index()], id);
  }
  /// A line with the record of what was tried on it.
  void look(const FieldName& /*field*/, MaterialId& id, const RemarkArgument& /*owner*/) {
    LineMaterial& material = rig_.materials[id.index()];
    visit(material, id);
    for (Record& record : rig_.records)
      if (record.kind == RecordKind::test_splice && record.of == material.name)
        visit(record, Remarks{{{UncertaintyPhrase::test_splice_of, {id}}}});
  }
  /// A place is bounded in each of its coordinates.
  void look(const FieldName& /*field*/, PointId& id, const RemarkArgument& /*owner*/) {
    Point& point = rig_.points[id.index()];
    std::size_t axis = 0;
    visit_fields(point.position, [&](const auto& field, Length& coordinate) {
      const Influences& influences = point.influences[axis++];
      put({UncertaintyPhrase::place_of, {Words{std::string(field.name)}, Words{point.base}}}, coordinate,
          influences, point.tolerance.has_value() || !influences.empty());
    });
  }

  template <class Value>
  void put(Remark name, Sourced<Value>& field) {
    put(std::move(name), field.value, field.influences, field.tolerance.has_value());
  }
  template <class Value>
  void put(Remark name, Value& value, const Influences& influences, bool bounded) {
    if (!seen_.insert(&value).second)
      return;
    const double stated = si_of(value);
    const double step = std::max(1e-6, 1e-4 * (stated < 0.0 ? -stated : stated));
    fields_.push_back({std::move(name), &influences, bounded, stated, step,
                       [&value](double si) { set_si(value, si); }, &value});
  }

  Rig& rig_;
  StayId stay_;
  bool is_line_ = false;
  std::vector<StayField> fields_;
  std::set<const void*> seen_;
};

} // namespace
} // namespace sheerpole::stay_fields_detail

namespace sheerpole {

std::vector<StayField> stay_fields(Rig& rig, StayId id) {
  stay_fields_detail::Collector collector(rig);
  collector.stay(id);
  return collector.take();
}

} // namespace sheerpole
