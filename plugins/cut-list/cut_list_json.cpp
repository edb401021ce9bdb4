#include "backend/json/json.hpp"
#include "plugins/cut-list/cut_list.hpp"

#include "backend/json/json_parts.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

Json line_json(const LineMaterial& line) {
  return {{"name", line.name},
          {"title", line.title},
          {"kind", name_of(line.kind)},
          {"construction", line.construction.text},
          {"grade", line.grade},
          {"size", line.size.name},
          {"diameter_mm", json_millimetres(line.diameter.value)}};
}

Json path_json(const Rig& rig, const Stay& stay) {
  Json json = Json::array();
  for (const PathStop& stop : stay.path)
    json.push_back({{"point", rig[stop.point].name},
                    {"passage", stop.passage == Passage::free      ? "free"
                                : stop.passage == Passage::clamped ? "clamped"
                                                                   : "end"}});
  return json;
}

Json section_json(const Rig& rig, const SumSection& section, const SourceSet& sources) {
  Json rows = Json::array();
  for (const SumRow& row : section.rows) {
    Json term = term_json(rig, *row.term, sources);
    term["printed_mm"] = json_millimetres(row.amount);
    rows.push_back(std::move(term));
  }
  return JsonObject(4)
      .add("name", std::string(name_of(section.kind)))
      .add("rows", std::move(rows))
      .add("total_mm", json_millimetres(section.exact))
      .add("printed_total_mm", json_millimetres(section.total))
      .take();
}

Json turns_json(Length travel, const std::optional<Length>& travel_per_turn) {
  return travel_per_turn && *travel_per_turn != Length{} ? Json(travel / *travel_per_turn) : Json();
}

Json adjuster_json(const TakeUp& adjuster, const Rig& rig, const SourceSet& sources) {
  return {{"stay", rig[adjuster.stay].name},
          {"part", rig[adjuster.part].name},
          {"set_mm", json_millimetres(adjuster.set.value)},
          {"set_source", provenance_json(adjuster.set.provenance, sources)},
          {"to_tighten_mm", json_millimetres(adjuster.to_tighten)},
          {"to_tighten_turns", turns_json(adjuster.to_tighten, adjuster.travel_per_turn)},
          {"to_slacken_mm", json_millimetres(adjuster.to_slacken)},
          {"to_slacken_turns", turns_json(adjuster.to_slacken, adjuster.travel_per_turn)},
          {"travel_per_turn_mm", json_millimetres(adjuster.travel_per_turn)},
          {"thread_engaged_mm", json_millimetres(adjuster.engaged)},
          {"one_thread_diameter_mm", json_millimetres(adjuster.least_engagement)}};
}

Json piece_json(const CheckedRig& checked, const ListedPiece& listed) {
  const Rig& rig = checked.rig();
  const SourceSet& sources = checked.sources();
  const PieceSum& sum = listed.sum;
  Json json =
      JsonObject(27)
          .add("name", listed.piece->name)
          .add("stay", listed.stay->name)
          .add("title", listed.stay->title)
          .add("side", name_of(listed.stay->side))
          .add("number", listed.piece->number)
          .add("of", listed.piece->of)
          .add("line", line_json(rig[listed.piece->material]))
          .add("path", path_json(rig, *listed.stay))
          .add("route", name_of(listed.derived->route))
          .add("other_routes", Json::array())
          .add("unknown", sum.unknown)
          .add("unknown_source", sum.unknown ? provenance_json(sum.unknown_source, sources) : Json())
          .add("complete", listed.complete())
          .add("sum", Json::array())
          .add("body", printed_json(sum.unknown, sum.body_complete, sum.body()))
          .add("cut", printed_json(sum.unknown, listed.complete(), sum.cut()))
          .add("above", end_json(rig, *listed.piece, WhichEnd::upper))
          .add("below", end_json(rig, *listed.piece, WhichEnd::lower))
          .add("in_hand", in_hand_json(*listed.piece, sources))
          .add("bench", bench_json(rig, *listed.piece))
          .add("not_counted", say_each(rig, listed.piece->not_counted))
          .add("draft", listed.draft())
          .add("state", name_of(checked.state(*listed.piece)))
          .add("state_words", listed.state)
          .add("draft_reasons", reasons_json(listed.draft_reasons))
          .add("not_corrected", say_each(rig, listed.derived->not_corrected))
          .add("uncertainty", Json())
          .take();
  if (const Uncertainty* found = range_of(listed))
    json["uncertainty"] = uncertainty_json(checked.rig(), *found, checked.derived());
  for (const RouteComparison& other : listed.derived->other_routes)
    json["other_routes"].push_back(
        {{"route", name_of(other.other)},
         {"length_mm", json_millimetres(other.length)},
         {"difference_mm", other.expected_x ? Json() : Json(json_millimetres(other.difference))},
         {"expected_x_mm", json_millimetres(other.expected_x)},
         {"provenance", provenance_json(other.provenance, sources)},
         {"slips", slips_json(rig, other)}});
  for (const SumSection& section : sum.sections)
    json["sum"].push_back(section_json(rig, section, sources));
  return json;
}

Json pair_json(const CutListBlock& block) {
  const Piece& first = *block.pieces[0].piece;
  const Piece& second = *block.pieces[1].piece;
  return {{"pieces", {first.name, second.name}},
          {"body_difference_mm", json_millimetres(first.body.known() - second.body.known())},
          {"cut_difference_mm", json_millimetres(first.cut.known() - second.cut.known())},
          {"printed_alike", block.same_rows}};
}

Json total_json(const LineTotal& total) {
  Json json{{"line", total.line->name},
            {"size", total.line->size.name},
            {"pieces", total.pieces},
            {"draft_pieces", total.drafts},
            {"length_before_spare_mm", json_millimetres(total.length)},
            {"not_summed", Json::array()}};
  for (const ListedPiece* listed : total.not_summed)
    json["not_summed"].push_back(
        {{"piece", listed->piece->name}, {"reason", listed->sum.unknown ? "unknown" : "incomplete"}});
  return json;
}

} // namespace

std::string cut_list_json(const CheckedRig& checked, const std::vector<CutListBlock>& blocks) {
  const Rig& rig = checked.rig();
  Json json{{"format", "sheerpole-cut-list"},
            {"version", 1},
            {"boat", rig.boat.title},
            {"draft", !checked.draft_reasons().empty()},
            {"draft_reasons", reasons_json(checked.draft_reasons())},
            {"pair_tolerance_mm",
             rig.boat.pair_tolerance ? Json(json_millimetres(rig.boat.pair_tolerance->value)) : Json()},
            {"pieces", Json::array()},
            {"pairs", Json::array()},
            {"adjusters", Json::array()},
            {"line_totals", Json::array()},
            {"draws", checked.derived().draws},
            {"seed", checked.derived().seed}};
  for (const CutListBlock& block : blocks) {
    for (const ListedPiece& listed : block.pieces)
      json["pieces"].push_back(piece_json(checked, listed));
    if (block.pieces.size() == 2)
      json["pairs"].push_back(pair_json(block));
  }
  for (const DerivedStay& stay : checked.derived().stays)
    for (const TakeUp& adjuster : stay.adjusters)
      json["adjusters"].push_back(adjuster_json(adjuster, rig, checked.sources()));
  for (const LineTotal& total : line_totals(checked, blocks))
    json["line_totals"].push_back(total_json(total));
  return write_json(json);
}

} // namespace sheerpole
