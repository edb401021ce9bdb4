#include "backend/json/behaviour_json.hpp"
#include "backend/json/json.hpp"
#include "backend/json/sourced_json.hpp"
#include "backend/json/strength_json.hpp"
#include "backend/source_words.hpp"

namespace sheerpole {

namespace {

Json end_json(const PieceEnd& end) {
  return {{"part", end.part}, {"title", end.title}, {"splice", end.splice}, {"note", end.note}};
}

Json piece_json(const Piece& piece, const Rig& rig, const SourceSet& sources) {
  Json missing = Json::array();
  for (const MissingInput& input : piece.missing)
    missing.push_back({{"what", input.what}, {"mend", input.mend}});
  return {{"name", piece.name},
          {"number", piece.number},
          {"of", piece.of},
          {"material", rig[piece.material].name},
          {"body", sum_json(piece.body, sources)},
          {"cut", sum_json(piece.cut, sources)},
          {"above", end_json(piece.upper)},
          {"below", end_json(piece.lower)},
          {"missing", std::move(missing)},
          {"not_counted", piece.not_counted},
          {"bench", bench_json(piece)}};
}

Json adjuster_json(const TakeUp& adjuster, const Rig& rig, const SourceSet& sources) {
  return {{"part", rig[adjuster.part].name},
          {"item", adjuster.item},
          {"set", sourced_json(adjuster.set, sources)},
          {"to_tighten_mm", json_millimetres(adjuster.to_tighten)},
          {"to_slacken_mm", json_millimetres(adjuster.to_slacken)},
          {"travel_per_turn_mm", json_millimetres(adjuster.travel_per_turn)},
          {"engaged_mm", json_millimetres(adjuster.engaged)},
          {"least_engagement_mm", json_millimetres(adjuster.least_engagement)}};
}

Json stay_json(const DerivedStay& stay, const Derived& derived, const Rig& rig, const SourceSet& sources) {
  Json json{{"stay", rig[stay.stay].name},
            {"route", name_of(stay.route)},
            {"pin_to_pin", sum_json(stay.pin_to_pin, sources)},
            {"body", sum_json(stay.body, sources)},
            {"other_routes", Json::array()},
            {"pieces", Json::array()},
            {"adjusters", Json::array()}};
  for (const RouteComparison& other : stay.other_routes)
    json["other_routes"].push_back({{"route", name_of(other.other)},
                                    {"length_mm", json_millimetres(other.length)},
                                    {"difference_mm", json_millimetres(other.difference)},
                                    {"provenance", provenance_json(other.provenance, sources)},
                                    {"slips", slips_json(other)}});
  for (const Piece& piece : stay.pieces)
    json["pieces"].push_back(piece_json(piece, rig, sources));
  for (const TakeUp& adjuster : stay.adjusters)
    json["adjusters"].push_back(adjuster_json(adjuster, rig, sources));
  add_behaviour_json(stay, derived, rig, json);
  json["chain"] = chain_json(stay.chain, sources);
  return json;
}

} // namespace

Json derived_json(const CheckedRig& checked) {
  Json json{{"draws", checked.derived().draws},
            {"seed", checked.derived().seed},
            {"inputs", inputs_json(checked.derived(), checked.sources())},
            {"stays", Json::array()}};
  for (const DerivedStay& stay : checked.derived().stays)
    json["stays"].push_back(stay_json(stay, checked.derived(), checked.rig(), checked.sources()));
  json["load_screenings"] = screenings_json(checked.derived(), checked.sources());
  return json;
}

} // namespace sheerpole
