#pragma once

#include "backend/tenths.hpp"
#include "model/remark.hpp"
#include "results/checked_rig.hpp"
#include "units/si_factors.hpp"

#include <nlohmann/json.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <utility>

namespace sheerpole {

/// Keys stay in the order in which they are written: the same rig gives the same bytes.
using Json = nlohmann::ordered_json;

/// An object whose members are written one behind the other, each name once: without looking for the name
/// among those before it, and without a list of pairs that becomes the object.
class JsonObject {
public:
  explicit JsonObject(std::size_t members) : json_(Json::value_t::object) {
    json_.get_ref<Json::object_t&>().reserve(members);
  }
  template <class Value>
  JsonObject& add(const char* name, Value&& value) {
    json_.get_ref<Json::object_t&>().emplace_back(name, std::forward<Value>(value));
    return *this;
  }
  Json take() { return std::move(json_); }

private:
  Json json_;
};

/// Millimetres as a number, rounded to a millionth of a millimetre: the last bits of a sum of metres say
/// nothing.
double json_millimetres(Length length);
/// The same of a printed length: whole tenths.
double json_millimetres(Tenths tenths);
/// The same, or null.
Json json_millimetres(const std::optional<Length>& length);

/// `{unknown, known_mm}`, the one way in which a length that may be X is written: with `unknown` it is X
/// and so much more, X being what nobody has measured in mm yet.
Json length_json(bool unknown, Length known);

/// `{class, note, written, assumptions, place}`; place is `{file, line, column}` or null.
Json provenance_json(const Provenance& provenance, const SourceSet& sources);

/// `{name, amount_mm, how, provenance}`
Json term_json(const Rig& rig, const Term& term, const SourceSet& sources);

/// `{name, unknown, unknown_source, known_mm, terms}`; unknown_source is null for a known length.
Json sum_json(const Rig& rig, const LengthSum& sum, const SourceSet& sources);

/// The rig as the files describe it.
Json rig_json(const CheckedRig& checked);

/// Everything calculated, in the order of the stays.
Json derived_json(const CheckedRig& checked);

/// The whole request as a back end receives it: rig, derived, draft reasons.
Json request_json(const CheckedRig& checked);

/// Two blanks of indent and a line end. Bytes that are not UTF-8 become U+FFFD.
std::string write_json(const Json& json);

/// `{value_mm, tolerance_mm, provenance}`
inline Json sourced_json(const Sourced<Length>& length, const SourceSet& sources) {
  return {{"value_mm", json_millimetres(length.value)},
          {"tolerance_mm", json_millimetres(length.tolerance)},
          {"provenance", provenance_json(length.provenance, sources)}};
}

/// A share of one: `{value, provenance}`
inline Json sourced_json(const Sourced<double>& share, const SourceSet& sources) {
  return {{"value", share.value}, {"provenance", provenance_json(share.provenance, sources)}};
}

/// `{value_deg, provenance}`
inline Json sourced_json(const Sourced<Angle>& angle, const SourceSet& sources) {
  return {{"value_deg", angle.value.radians / degree},
          {"provenance", provenance_json(angle.provenance, sources)}};
}

/// `{value_kn, provenance}`
inline Json sourced_json(const Sourced<Force>& force, const SourceSet& sources) {
  return {{"value_kn", force.value.kilonewtons()},
          {"provenance", provenance_json(force.provenance, sources)}};
}

/// `{value_d, provenance}` for diameters of the rope at hand, else `{value_mm, provenance}`
inline Json sourced_json(const Sourced<RopeMeasure>& measure, const SourceSet& sources) {
  Json json;
  if (measure.value.in_diameters)
    json["value_d"] = measure.value.amount;
  else
    json["value_mm"] = json_millimetres(Length::metres(measure.value.amount));
  json["provenance"] = provenance_json(measure.provenance, sources);
  return json;
}

/// The value, or null when it is not stated.
template <class Value>
Json sourced_json(const std::optional<Sourced<Value>>& value, const SourceSet& sources) {
  return value ? sourced_json(*value, sources) : Json();
}

} // namespace sheerpole
