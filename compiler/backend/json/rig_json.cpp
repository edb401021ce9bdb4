#include "backend/json/json.hpp"
#include "backend/json/json_parts.hpp"
#include "base/internal_error.hpp"
#include "model/field.hpp"
#include "wording/model_words.hpp"

#include <algorithm>
#include <array>
#include <concepts>
#include <string_view>
#include <type_traits>

namespace sheerpole {

namespace rig_json_members {

using namespace std::string_view_literals;

/// What of a type of the model stands otherwise in JSON than in the table of its fields. Everything else is
/// written under its name there, in that order, so nothing that is added to the model is forgotten.
template <class Thing>
struct Shape {
  static constexpr std::array<std::string_view, 0> left_out{};
  static constexpr std::array<std::string_view, 0> last{}; ///< keys that programs met after all others
};
template <>
struct Shape<Point> {
  static constexpr std::array left_out{"base"sv}; // follows from the name
  static constexpr std::array last{"provenance"sv, "tolerance_mm"sv};
};
template <>
struct Shape<Spreader> : Shape<void> {
  static constexpr std::array last{"root"sv, "tip"sv, "particulars"sv};
};
template <>
struct Shape<Part> : Shape<void> {
  static constexpr std::array last{"wrap"sv, "step"sv, "particulars"sv};
};
template <>
struct Shape<Reading> {
  static constexpr std::array left_out{"shift"sv}; // of trials alone
  static constexpr std::array last{"hoist_offset"sv, "tape"sv, "old_line"sv, "particulars"sv};
};
template <>
struct Shape<Stay> {
  static constexpr std::array left_out{"base"sv, "trials"sv}; // follow from name and provenances
  static constexpr std::array last{"material"sv,    "duties"sv, "apart"sv,
                                   "particulars"sv, "stack"sv,  "replaces"sv};
};
template <>
struct Shape<StatePosition> : Shape<void> {
  static constexpr std::array left_out{"items"sv}; // places in the stack, which name the same adjusters
};
template <>
struct Shape<Record> : Shape<void> {
  static constexpr std::array left_out{"stays"sv}; // follow from `of`
};
template <>
struct Shape<UserRule> {
  static constexpr std::array left_out{"kinds"sv}; // follow from sort and property
  static constexpr std::array last{"looks_at"sv, "sort"sv,         "property"sv, "bounds"sv, "is"sv,
                                   "is_not"sv,   "to_be_stated"sv, "why"sv,      "mend"sv};
};

/// Keys that are not the name of the member.
struct Renamed {
  std::string_view member;
  std::string_view key;
};
constexpr std::array renamed{Renamed{"line_length", "length"}, Renamed{"as_set", "adjusters"},
                             Renamed{"slug", "finding"}};

constexpr std::string_view key_of(std::string_view member) {
  for (const Renamed& row : renamed)
    if (row.member == member)
      return row.key;
  return member;
}

template <class Thing>
constexpr bool is_left_out(std::string_view member) {
  const auto& names = Shape<Thing>::left_out;
  return std::find(names.begin(), names.end(), member) != names.end();
}

template <class Thing>
consteval bool leaves_out_what_is_there() {
  bool all = true;
  for (const std::string_view name : Shape<Thing>::left_out)
    all = all && std::apply([&](const auto&... fields) { return ((fields.name == name) || ...); },
                            fields_of(static_cast<const Thing*>(nullptr)));
  return all;
}

/// Writes every member of every thing of a rig by the tables of their fields. A type of member that is not
/// known here does not compile.
class RigJson {
public:
  explicit RigJson(const CheckedRig& checked) : rig_(checked.rig()), sources_(checked.sources()) {}

  template <HasFields Thing>
  Json thing(const Thing& one) const {
    return placed<Thing>(members(one));
  }

private:
  const Rig& rig_;
  const SourceSet& sources_;

  template <HasFields Thing>
  Json members(const Thing& one) const {
    static_assert(leaves_out_what_is_there<Thing>());
    Json json = Json::object();
    visit_fields(one, [&](const auto& field, const auto& member) {
      if (!is_left_out<Thing>(field.name))
        add(json, std::string(key_of(field.name)), member);
    });
    return json;
  }

  /// The members in the order that programs know.
  template <class Thing>
  static Json placed(Json json) {
    for (const std::string_view key : Shape<Thing>::last) {
      const auto found = json.find(std::string(key));
      if (found == json.end())
        internal_error("a member that JSON has last is not there");
      Json value = std::move(*found);
      json.erase(found);
      json[std::string(key)] = std::move(value);
    }
    return json;
  }

  // Things of which a member says what the others mean.
  Json thing(const StackItem& item) const {
    Json json;
    visit_fields(item, [&](const auto& field, const auto& member) {
      constexpr std::array names_of_line{"line_length"sv, "material"sv, "in_hand"sv, "in_hand_over"sv,
                                         "stock"sv};
      const bool of_line =
          std::find(names_of_line.begin(), names_of_line.end(), field.name) != names_of_line.end();
      if (field.name == "kind")
        json["item"] = value(item.kind);
      else if (field.name == "stock" && item.stock.empty() && item.kind == StackItem::Kind::line)
        json["stock"] = nullptr;
      else if (of_line == (item.kind == StackItem::Kind::line))
        add(json, std::string(key_of(field.name)), member);
    });
    return json;
  }
  Json thing(const UserRule& rule) const {
    Json json = members(rule);
    json["bounds"] = Json::array(); // each, whatever it is on
    for (const auto& [name, bound] : {std::pair{"at-least", &rule.at_least}, {"at-most", &rule.at_most}})
      if (*bound)
        json["bounds"].push_back(
            {{"bound", name}, {"text", (*bound)->provenance.written}, {"si", (*bound)->value.si}});
    return placed<UserRule>(std::move(json));
  }
  Json thing(const StatePosition& position) const {
    Json json = members(position);
    for (Json& item : json["adjusters"])
      item = {{"part", item["part"]}, {"set_length", item["set_length"]}};
    return json;
  }
  Json thing(const Difference& difference) const {
    const DifferenceWords words = words_of(difference);
    return {{"by", words.by}, {"of", words.of}, {"what", words.what}, {"was", words.was}, {"is", words.is}};
  }

  // A member under its key; lengths and places say their unit there.
  template <class Member>
  void add(Json& json, const std::string& key, const Member& member) const {
    json[key] = value(member);
  }
  void add(Json&, const std::string&, const Span&) const {} // of whole things; provenances say where
  void add(Json&, const std::string&, const std::optional<Span>&) const {}
  void add(Json&, const std::string&, const std::vector<StatedBound>&) const {}  // stand with their numbers
  void add(Json&, const std::string&, const std::array<Influences, 3>&) const {} // follow from them
  void add(Json& json, const std::string& key, Length length) const {
    json[key + "_mm"] = json_millimetres(length);
  }
  void add(Json& json, const std::string& key, const std::optional<Length>& length) const {
    json[key + "_mm"] = json_millimetres(length);
  }
  void add(Json& json, const std::string& key, const Vector3& place) const {
    const std::array lengths{json_millimetres(place.x), json_millimetres(place.y),
                             json_millimetres(place.z)};
    if (key != "position")
      json[key + "_mm"] = lengths;
    else // a point is its place
      for (std::size_t i = 0; i < lengths.size(); ++i)
        json[std::array{"x_mm", "y_mm", "z_mm"}[i]] = lengths[i];
  }
  void add(Json& json, const std::string& key, const Thread& thread) const {
    json[key] = thread.designation;
    json["diameter_mm"] = json_millimetres(thread.diameter);
    json["pitch_mm"] = json_millimetres(thread.pitch);
  }

  // Each type of member.
  template <class Plain>
  requires std::is_arithmetic_v<Plain> || std::same_as<Plain, std::string> ||
      std::same_as<Plain, std::string_view> || std::same_as < Plain,
      std::array < std::array<double, 3>,
  3 >> Json value(const Plain& plain) const { return plain; }
  template <class Enumeration>
  requires std::is_enum_v<Enumeration> Json value(Enumeration one)
  const { return name_of(one); }
  Json value(StackItem::Kind kind) const { return kind == StackItem::Kind::line ? "line" : "part"; }
  Json value(const Construction& made) const { return made.text; }
  Json value(const NamedSize& size) const { return size.name; }
  Json value(const Provenance& provenance) const { return provenance_json(provenance, sources_); }
  Json value(const Limits& limits) const;
  template <class Tag>
  Json value(Id<Tag> id) const {
    return rig_[id].name;
  }
  template <HasFields Thing>
  Json value(const Thing& one) const {
    return thing(one);
  }
  template <class Value>
  Json value(const Sourced<Value>& sourced) const {
    return sourced_json(sourced, sources_);
  }
  /// A bound on a length as such; null for one on anything else.
  Json value(const Sourced<Quantity>& bound) const {
    if (bound.value.dimension != dimension::length)
      return {};
    Sourced<Length> length{Length::from_si(bound.value.si), bound.provenance, std::nullopt};
    if (bound.tolerance)
      length.tolerance = Length::from_si(bound.tolerance->si);
    return sourced_json(length, sources_);
  }
  template <class Value>
  Json value(const std::optional<Value>& stated) const {
    return stated ? value(*stated) : Json();
  }
  template <class Value>
  Json value(const std::vector<Value>& all) const {
    Json json = Json::array();
    for (const Value& one : all)
      json.push_back(value(one));
    return json;
  }
  Json value(const std::vector<Particular>& facts) const { return particulars_json(facts, sources_); }
};

/// The three of version 1 by name, then every threshold that the file states, off when it has no value.
Json RigJson::value(const Limits& limits) const {
  const auto one = [&](Limit limit, auto&& value_json) {
    const StatedLimit* stated = limits.find(limit);
    if (stated == nullptr || !stated->value)
      return Json();
    Json json = value_json(*stated->value);
    json["provenance"] = value(stated->provenance);
    return json;
  };
  const auto length = [](double metres) -> Json {
    return {{"value_mm", json_millimetres(Length::metres(metres))}, {"tolerance_mm", nullptr}};
  };
  const auto share = [](double amount) -> Json { return {{"value", amount}}; };
  Json json{{"routes_apart", one(Limit::routes_apart, length)},
            {"adjuster_reserve", one(Limit::adjuster_reserve, share)},
            {"thread_engaged", one(Limit::thread_engaged, share)},
            {"stated", Json::array()}};
  for (const StatedLimit& stated : limits.stated())
    json["stated"].push_back({{"name", row_of(stated.limit).name},
                              {"text", limit_text(limits, stated.limit)},
                              {"si", stated.value ? Json(*stated.value) : Json()},
                              {"provenance", value(stated.provenance)}});
  if (const auto& second = limits.stated_second_measure())
    json["stated"].push_back({{"name", "second-measure"},
                              {"text", second->provenance.written},
                              {"si", Json()},
                              {"provenance", value(second->provenance)}});
  return json;
}

} // namespace rig_json_members

Json particulars_json(const std::vector<Particular>& particulars, const SourceSet& sources) {
  Json json = Json::array();
  for (const Particular& particular : particulars) {
    const std::optional<Quantity>& tolerance = particular.value.tolerance;
    Json values = Json::array();
    for (const Sourced<Quantity>& value : particular.values)
      values.push_back(value.value.si);
    json.push_back({{"name", particular.name},
                    {"text", particular.text},
                    {"provenance", provenance_json(particular.value.provenance, sources)},
                    {"si", particular.value.value.si},
                    {"tolerance_si", tolerance ? Json(tolerance->si) : Json()},
                    {"values_si", std::move(values)},
                    {"names", particular.names}});
  }
  return json;
}

Json rig_json(const CheckedRig& checked) {
  return rig_json_members::RigJson(checked).thing(checked.rig());
}

} // namespace sheerpole
