#include "backend/json/json_parts.hpp"

#include "backend/json/json.hpp"

namespace sheerpole {

namespace {

Json stay_names(const std::vector<StayId>& stays, const Rig& rig) {
  Json names = Json::array();
  for (const StayId id : stays)
    names.push_back(rig[id].name);
  return names;
}

Json state_json(const State& state, const Rig& rig, const SourceSet& sources) {
  Json positions = Json::array();
  for (const StatePosition& position : state.positions) {
    Json set = Json::array();
    for (const StackItem& item : position.as_set)
      set.push_back(
          {{"part", rig[item.part].name}, {"set_length", sourced_json(item.set_length, sources)}});
    positions.push_back({{"stay", rig[position.stay].name},
                         {"adjusters", std::move(set)},
                         {"stowed_at", position.stowed_at ? Json(rig[*position.stowed_at].name) : Json()},
                         {"note", position.note}});
  }
  return {{"name", state.name},
          {"title", state.title},
          {"note", state.note},
          {"positions", std::move(positions)}};
}

/// The three of version 1 by name, then every threshold that the file states, off when it has no value.
Json limits_json(const Limits& limits, const SourceSet& sources) {
  const auto one = [&](Limit limit, auto&& value_json) {
    const StatedLimit* stated = limits.find(limit);
    if (stated == nullptr || !stated->value)
      return Json();
    Json json = value_json(*stated->value);
    json["provenance"] = provenance_json(stated->provenance, sources);
    return json;
  };
  const auto length = [](double metres) -> Json {
    return {{"value_mm", json_millimetres(Length::metres(metres))}, {"tolerance_mm", nullptr}};
  };
  const auto share = [](double value) -> Json { return {{"value", value}}; };
  Json json{{"routes_apart", one(Limit::routes_apart, length)},
            {"adjuster_reserve", one(Limit::adjuster_reserve, share)},
            {"thread_engaged", one(Limit::thread_engaged, share)},
            {"stated", Json::array()}};
  for (const StatedLimit& stated : limits.stated())
    json["stated"].push_back({{"name", row_of(stated.limit).name},
                              {"text", limits.text(stated.limit)},
                              {"si", stated.value ? Json(*stated.value) : Json()},
                              {"provenance", provenance_json(stated.provenance, sources)}});
  return json;
}

/// A bound on a length as such; null for one on anything else.
Json length_bound_json(const std::optional<Sourced<Quantity>>& bound, const SourceSet& sources) {
  if (!bound || bound->value.dimension != dimension::length)
    return {};
  Sourced<Length> length{Length::from_si(bound->value.si), bound->provenance, std::nullopt};
  if (bound->tolerance)
    length.tolerance = Length::from_si(bound->tolerance->si);
  return sourced_json(length, sources);
}

/// Every bound of a rule, whatever it is on.
Json bounds_json(const UserRule& rule) {
  Json bounds = Json::array();
  for (const auto& [name, bound] : {std::pair{"at-least", &rule.at_least}, {"at-most", &rule.at_most}})
    if (*bound)
      bounds.push_back(
          {{"bound", name}, {"text", (*bound)->provenance.written}, {"si", (*bound)->value.si}});
  return bounds;
}

Json rule_json(const UserRule& rule, const Rig& rig, const SourceSet& sources) {
  return {{"name", rule.name},
          {"title", rule.title},
          {"quantity", rule.quantity},
          {"at_least", length_bound_json(rule.at_least, sources)},
          {"at_most", length_bound_json(rule.at_most, sources)},
          {"stays", stay_names(rule.stays, rig)},
          {"severity", rule.severity},
          {"message", rule.message},
          {"active", rule.active},
          {"looks_at", rule.looks_at},
          {"sort", rule.sort},
          {"property", rule.property},
          {"bounds", bounds_json(rule)},
          {"is", rule.is},
          {"is_not", rule.is_not},
          {"to_be_stated", rule.to_be_stated},
          {"why", rule.why},
          {"mend", rule.mend}};
}

Json inspection_json(const Inspection& inspection, const Rig& rig) {
  Json between = Json::array();
  for (const PartId part : inspection.between)
    between.push_back(rig[part].name);
  return {{"stays", stay_names(inspection.stays, rig)},
          {"between", std::move(between)},
          {"date", inspection.date},
          {"by", inspection.by},
          {"condition", inspection.condition},
          {"note", inspection.note}};
}

} // namespace

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

void add_records_json(const CheckedRig& checked, Json& rig_json) {
  const Rig& rig = checked.rig();
  const SourceSet& sources = checked.sources();
  const auto fill = [&](const char* key, const auto& things, auto&& as_json) {
    rig_json[key] = Json::array();
    for (const auto& thing : things)
      rig_json[key].push_back(as_json(thing));
  };
  fill("states", rig.states, [&](const State& state) { return state_json(state, rig, sources); });
  fill("records", rig.records, [&](const Record& record) -> Json {
    return {{"kind", record.kind},
            {"name", record.name},
            {"title", record.title},
            {"of", record.of},
            {"facts", particulars_json(record.facts, sources)}};
  });
  rig_json["limits"] = limits_json(rig.limits, sources);
  fill("rules", rig.rules, [&](const UserRule& rule) { return rule_json(rule, rig, sources); });
  fill("waivers", rig.waivers, [&](const Waiver& waiver) -> Json {
    return {{"finding", waiver.slug}, {"stay", waiver.stay},   {"reason", waiver.reason},
            {"by", waiver.by},        {"until", waiver.until}, {"accepts", waiver.accepts}};
  });
  fill("expectations", rig.expectations, [&](const Expectation& expectation) -> Json {
    return {{"stays", stay_names(expectation.stays, rig)},
            {"quantity", expectation.quantity},
            {"value", sourced_json(expectation.value, sources)}};
  });
  fill("inspections", rig.inspections,
       [&](const Inspection& inspection) { return inspection_json(inspection, rig); });
  fill("differences", rig.differences, [&](const Difference& difference) -> Json {
    return {{"by", difference.origin},
            {"of", difference.subject},
            {"what", difference.property},
            {"was", difference.was},
            {"is", difference.is}};
  });
}

} // namespace sheerpole
