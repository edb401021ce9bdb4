#include "backend/json/strength_json.hpp"

#include "backend/json/sourced_json.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

constexpr const char* kinds[] = {"line", "other line", "part", "lashing", "pin", "hole"};

Json place_json(const std::optional<std::size_t>& place) {
  return place ? Json(*place) : Json();
}

Json link_json(const Rig& rig, const ChainLink& link, const SourceSet& sources) {
  Json lacking = Json::array();
  for (const UnstatedStrength& one : link.not_stated)
    lacking.push_back({{"property", say(rig, one.property)}, {"of", say(rig, one.of)}});
  return {{"kind", kinds[static_cast<std::size_t>(link.kind)]},
          {"item", link.item},
          {"name", say(rig, link.name)},
          {"newtons", link.break_load ? Json(link.break_load->newtons()) : Json()},
          {"how", say(rig, link.how)},
          {"not_stated", std::move(lacking)},
          {"meant", link.meant},
          {"counted", link.counted},
          {"provenance", provenance_json(link.provenance, sources)}};
}

} // namespace

Json chain_json(const Rig& rig, const StayChain& chain, const SourceSet& sources) {
  Json json{{"links", Json::array()},
            {"line", place_json(chain.line)},
            {"weakest", place_json(chain.weakest)},
            {"unknown", chain.unknown}};
  for (const ChainLink& link : chain.links)
    json["links"].push_back(link_json(rig, link, sources));
  return json;
}

Json screenings_json(const Rig& rig, const Derived& derived, const SourceSet& sources) {
  Json json = Json::array();
  for (const LoadScreening& screening : derived.load_screenings) {
    Json inputs = Json::array();
    for (const ScreeningNumber& input : screening.inputs)
      inputs.push_back({{"name", say(rig, input.name)},
                        {"si", input.value.si},
                        {"how", say(rig, input.how)},
                        {"provenance", provenance_json(input.provenance, sources)}});
    Json results = Json::array();
    for (const ScreeningNumber& result : screening.results)
      results.push_back(
          {{"name", say(rig, result.name)}, {"si", result.value.si}, {"how", say(rig, result.how)}});
    Json panels = Json::array();
    for (const MastPanel& panel : screening.panels)
      panels.push_back({{"name", say(rig, panel.name)},
                        {"length_mm", json_millimetres(panel.length)},
                        {"compression_newtons", panel.compression.newtons()}});
    json.push_back({{"method", name_of(screening.method)},
                    {"publication", say(rig, publication_of(screening.method))},
                    {"of", screening.of},
                    {"inputs", std::move(inputs)},
                    {"results", std::move(results)},
                    {"not_checked", say_each(rig, screening.not_checked)},
                    {"notes", say_each(rig, screening.notes)},
                    {"spar", screening.spar},
                    {"panels", std::move(panels)}});
  }
  return json;
}

} // namespace sheerpole
