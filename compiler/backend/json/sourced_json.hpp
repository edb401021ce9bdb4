#pragma once

#include "backend/json/json.hpp"

#include <optional>
#include <utility>

namespace sheerpole {

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
