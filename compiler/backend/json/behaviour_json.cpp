#include "backend/json/json_parts.hpp"

#include "backend/json/json.hpp"
#include "wording/length_words.hpp"
#include "wording/phrase_table.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

Json place_json(const MarkPlace& mark) {
  return length_json(mark.unknown, mark.known);
}

/// A length that may be X of a stay and so much more: `{x_of, plus_mm, unknown, known_mm}`, x_of null where
/// X is not in it. `plus_mm` is the older name of `known_mm`.
Json of_x_json(const Rig& rig, const Piece& piece, const MarkPlace& place) {
  Json json{{"x_of", place.unknown ? Json(rig[piece.stay].name) : Json()},
            {"plus_mm", json_millimetres(place.known)}};
  json.update(place_json(place));
  return json;
}

/// Where the cord lies along a piece; null for one whose length is a number.
Json cord_json(const BenchMarks& bench) {
  if (!bench.cord)
    return {};
  return {{"bearing_aloft_mm", json_millimetres(bench.cord->upper)},
          {"bearing_below_mm", json_millimetres(bench.cord->lower)},
          {"drawn_in_aloft_mm", json_millimetres(bench.cord->drawn_in_upper)},
          {"drawn_in_below_mm", json_millimetres(bench.cord->drawn_in_lower)},
          {"behaves_mm", json_millimetres(bench.cord->behaves)}};
}

Json optional_number(const std::optional<double>& number) {
  return number ? Json(*number) : Json();
}

Json account_json(const Rig& rig, const Account& account) {
  Json json{{"to_tighten_mm", json_millimetres(account.to_tighten)},
            {"to_slacken_mm", json_millimetres(account.to_slacken)},
            {"entries", Json::array()},
            {"left", Json::array()}};
  for (const AccountEntry& entry : account.entries)
    json["entries"].push_back({{"name", say(rig, entry.name)},
                               {"tightens_mm", json_millimetres(entry.tightens)},
                               {"slackens_mm", json_millimetres(entry.slackens)},
                               {"dated", entry.dated},
                               {"of_temperature", entry.of_temperature},
                               {"until_set", entry.until_set},
                               {"how", say(rig, entry.how)},
                               {"not_checked", say(rig, entry.not_checked)}});
  for (const AccountLeft& left : account.left)
    json["left"].push_back({{"after", say(rig, left.after)},
                            {"to_tighten_mm", json_millimetres(left.to_tighten)},
                            {"to_slacken_mm", json_millimetres(left.to_slacken)},
                            {"complete", left.complete}});
  return json;
}

Json temperature_json(const Rig& rig, const ThermalTable& table) {
  Json json{{"rows", Json::array()}, {"not_checked", say_each(rig, table.not_checked)}};
  for (const ThermalRow& row : table.rows)
    json["rows"].push_back({{"kelvin", row.kelvin},
                            {"line_mm", json_millimetres(row.line)},
                            {"path_mm", json_millimetres(row.path)},
                            {"slack_mm", json_millimetres(row.slack())}});
  return json;
}

Json tensions_json(const Rig& rig, const DerivedStay& stay) {
  Json json = Json::array();
  for (const TensionEstimate& estimate : stay.tensions)
    json.push_back({{"method", name_of(estimate.method)},
                    {"newtons", estimate.tension ? Json(estimate.tension->newtons()) : Json()},
                    {"share_of_break", optional_number(estimate.share_of_break)},
                    {"how", say(rig, estimate.how)},
                    {"not_checked", say(rig, estimate.not_checked)},
                    {"date", estimate.date},
                    {"by", estimate.by}});
  return json;
}

Json counts_json(const Rig& rig, const PartCounts& counts) {
  Json parts = Json::array();
  for (const auto& [part, count] : counts)
    parts.push_back({{"part", rig[part].name}, {"count", count}});
  return parts;
}

Json new_joints_json(const Rig& rig, const ChangedStack& stack) {
  static constexpr const char* results[] = {"pass", "finding", "not checked"};
  Json joints = Json::array();
  for (const NewJoint& joint : stack.joints)
    joints.push_back({{"name", say(rig, joint.name)},
                      {"result", results[static_cast<std::size_t>(joint.result)]},
                      {"words", say(rig, joint.words)}});
  return joints;
}

Json play_json(const Rig& rig, const Play& play) {
  if (play.rows.empty())
    return Json();
  Json rows = Json::array();
  for (const PlayRow& row : play.rows)
    rows.push_back({{"out", counts_json(rig, row.stack.out)},
                    {"in", counts_json(rig, row.stack.in)},
                    {"to_tighten_mm", json_millimetres(row.to_tighten)},
                    {"to_slacken_mm", json_millimetres(row.to_slacken)},
                    {"joints", new_joints_json(rig, row.stack)}});
  return {{"by_adjusters_mm", json_millimetres(play.by_adjusters)},
          {"in_all_mm", json_millimetres(play.in_all)},
          {"rows", std::move(rows)}};
}

Json fits_json(const DerivedStay& stay, const Rig& rig) {
  Json json = Json::array();
  for (const Fit& fit : stay.fits) {
    Json ways = Json::array();
    for (const FitWay& way : fit.ways) {
      ways.push_back({{"parts", counts_json(rig, way.parts)},
                      {"out", counts_json(rig, way.out)},
                      {"joints", new_joints_json(rig, way.stack)},
                      {"adjuster_mm", json_millimetres(way.adjuster)},
                      {"open", way.open}});
    }
    json.push_back({{"line_mm", json_millimetres(fit.line)},
                    {"gap_mm", json_millimetres(fit.gap)},
                    {"adjuster", fit.not_checked.empty() ? Json(rig[fit.adjuster].name) : Json()},
                    {"shortest_mm", json_millimetres(fit.shortest)},
                    {"longest_mm", json_millimetres(fit.longest)},
                    {"ways", std::move(ways)},
                    {"short_by_mm", json_millimetres(fit.short_by)},
                    {"not_checked", say(rig, fit.not_checked)}});
  }
  return json;
}

Json joints_json(const DerivedStay& stay, const Rig& rig) {
  static constexpr const char* results[] = {"pass", "finding", "not checked"};
  Json json = Json::array();
  for (const Joint& joint : stay.joints) {
    Json checks = Json::array();
    for (const JointCheck& check : joint.checks)
      checks.push_back({{"slug", slug_of(check.finding)},
                        {"result", results[static_cast<std::size_t>(check.result)]},
                        {"words", say(rig, check.words)},
                        {"play_mm", json_millimetres(check.play)}});
    json.push_back({{"name", say(rig, joint.name)},
                    {"upper_item", joint.upper},
                    {"lower_item", joint.lower},
                    {"checks", std::move(checks)}});
  }
  return json;
}

} // namespace

Json uncertainty_json(const Rig& rig, const Uncertainty& found, const Derived& derived) {
  Json json{{"worst_low_mm", json_millimetres(found.worst_low)},
            {"worst_high_mm", json_millimetres(found.worst_high)},
            {"standard_mm", json_millimetres(found.standard)},
            {"degrees_of_freedom", found.freedom},
            {"coverage_factor", found.coverage_factor},
            {"expanded_mm", json_millimetres(found.expanded)},
            {"drawn_low_mm", json_millimetres(found.drawn_low)},
            {"drawn_high_mm", json_millimetres(found.drawn_high)},
            {"drawn_standard_mm", json_millimetres(found.drawn_standard)},
            {"adjuster_reaches", optional_number(found.reaches)},
            {"without_bound", say_each(rig, found.without_bound)},
            {"shares", Json::array()}};
  for (const UncertaintyShare& share : found.shares)
    json["shares"].push_back({{"input", say(rig, derived.inputs[share.input].name)},
                              {"distribution", words(derived.inputs[share.input].distribution)},
                              {"per_bound_mm", json_millimetres(share.per_bound)},
                              {"standard_mm", json_millimetres(share.standard)},
                              {"share", share.share}});
  return json;
}

Json inputs_json(const Rig& rig, const Derived& derived, const SourceSet& sources) {
  Json json = Json::array();
  for (const UncertainInput& input : derived.inputs) {
    Provenance where;
    where.place = input.place;
    json.push_back({{"name", say(rig, input.name)},
                    {"bound", input.bound},
                    {"distribution", words(input.distribution)},
                    {"degrees_of_freedom", input.freedom},
                    {"place", provenance_json(where, sources)["place"]}});
  }
  return json;
}

Json slips_json(const Rig& rig, const RouteComparison& other) {
  Json json = Json::array();
  for (const LikelySlip& slip : other.slips)
    json.push_back(
        {{"words", say(rig, slip.words)}, {"unexplained_mm", json_millimetres(slip.unexplained)}});
  return json;
}

Json bench_json(const Rig& rig, const Piece& piece) {
  Json marks = Json::array();
  for (const BenchMark& mark : piece.bench.marks)
    marks.push_back({{"name", mark_name(mark)},
                     {"from_aloft", place_json(mark.from_upper)},
                     {"from_below", place_json(mark.from_lower)},
                     {"from_u", mark.on_cord ? of_x_json(rig, piece, mark.on_cord->from_upper) : Json()},
                     {"from_l", mark.on_cord ? of_x_json(rig, piece, mark.on_cord->from_lower) : Json()}});
  return {{"marks", std::move(marks)},
          {"dry_fit", piece.bench.dry_fit ? place_json(*piece.bench.dry_fit) : Json()},
          {"not_known", say_each(rig, piece.bench.not_known)},
          {"cord", cord_json(piece.bench)},
          {"body", piece.body.unknown ? of_x_json(rig, piece, {true, piece.body.known()}) : Json()},
          {"cut", piece.cut.unknown ? of_x_json(rig, piece, {true, piece.cut.known()}) : Json()}};
}

Json buried_json(const Piece& piece, WhichEnd end) {
  const Buried found = buried(piece, end);
  return {{"bury_mm", json_millimetres(found.bury)},
          {"spare_mm", json_millimetres(found.spare)},
          {"total_mm", json_millimetres(found.total())}};
}

Json in_hand_json(const Piece& piece, const SourceSet& sources) {
  if (!piece.in_hand)
    return Json();
  const InHand& there = *piece.in_hand;
  const bool known = there.worked_out();
  return {{"stated", sourced_json(there.stated, sources)},
          {"beyond_the_cut", there.beyond},
          {"stock", there.stock.empty() ? Json() : Json(there.stock)},
          {"longest_x_mm", there.longest_x ? Json(json_millimetres(*there.longest_x)) : Json()},
          {"over_mm", known ? Json(json_millimetres(there.over)) : Json()},
          {"kept_mm", known ? Json(json_millimetres(there.kept)) : Json()},
          {"cut_away_mm", known ? Json(json_millimetres(there.cut_away)) : Json()},
          {"lacking_mm", known ? Json(json_millimetres(there.lacking)) : Json()},
          {"cut_nothing", there.cut_nothing()}};
}

void add_behaviour_json(const DerivedStay& stay, const Derived& derived, const Rig& rig, Json& json) {
  json["not_corrected"] = say_each(rig, stay.not_corrected);
  json["uncertainty"] = stay.uncertainty ? uncertainty_json(rig, *stay.uncertainty, derived) : Json();
  json["account"] = account_json(rig, stay.account);
  json["temperature"] = temperature_json(rig, stay.thermal);
  json["tensions"] = tensions_json(rig, stay);
  json["sag"] = Json();
  if (stay.sag)
    json["sag"] = {{"span_mm", json_millimetres(stay.sag->span)},
                   {"newtons", stay.sag->tension.newtons()},
                   {"depth_mm", json_millimetres(stay.sag->depth)},
                   {"extra_length_mm", json_millimetres(stay.sag->extra_length)}};
  json["line_before"] = Json();
  if (stay.replacement)
    json["line_before"] = {{"material", rig[stay.replacement->old_line].name},
                           {"stiffness", optional_number(stay.replacement->stiffness)},
                           {"strength", optional_number(stay.replacement->strength)},
                           {"mass", optional_number(stay.replacement->mass)},
                           {"kilograms", optional_number(stay.replacement->new_kilograms)},
                           {"kilograms_before", optional_number(stay.replacement->old_kilograms)},
                           {"centre_height_mm", json_millimetres(stay.replacement->centre_height)},
                           {"not_checked", say_each(rig, stay.replacement->not_checked)}};
  json["fits"] = fits_json(stay, rig);
  json["play"] = play_json(rig, stay.play);
  json["joints"] = joints_json(stay, rig);
  add_fitting_json(stay, rig, json);
}

} // namespace sheerpole
