#include "service/answer_json.hpp"

#include "backend/paper_words.hpp"
#include "calculate/cut/order_length.hpp"
#include "kinds/example_unit.hpp"
#include "service/begin/first_rig.hpp"
#include "wording/language_words.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <utility>

namespace sheerpole::service {

namespace {

Json spot_json(const TextPlace& place) {
  return {{"line", place.line}, {"character", place.character}, {"byte", place.byte}, {"unit", place.unit}};
}

Json finding_json(const OpenBoat& boat, const Diagnostic& finding) {
  Json json;
  json["finding"] = finding.slug;
  json["severity"] = name_of(finding.severity);
  json["message"] = finding.message;
  json["why"] = finding.why;
  json["subject"] = finding.subject;
  json["waived"] = finding.waived;
  json["place"] = finding.primary ? place_json(boat, finding.primary->span) : Json();
  json["others"] = Json::array();
  for (const Label& other : finding.others)
    json["others"].push_back({{"words", other.text}, {"place", place_json(boat, other.span)}});
  json["edit"] = Json();
  if (finding.edit)
    json["edit"] = {{"title", finding.edit->title},
                    {"certain", finding.edit->certain},
                    {"edits", edits_json(boat, {edit_of(boat.text(finding.edit->span.source),
                                                        finding.edit->span, finding.edit->replacement)})}};
  return json;
}

/// `{x, plus_mm, unknown, known_mm}`: with `unknown` the length is X and so much more. `x` and `plus_mm`
/// say the same as they did before all JSON had one spelling of it.
Json with_x_json(bool unknown, Length known) {
  Json json{{"x", unknown}, {"plus_mm", json_millimetres(known)}};
  json.update(length_json(unknown, known));
  return json;
}

Json changed_json(const ChangedLength& length) {
  return {{"was", with_x_json(length.unknown_was, length.was)},
          {"is", with_x_json(length.unknown_is, length.is)},
          {"change_mm", length.comparable ? Json(json_millimetres(length.difference())) : Json()}};
}

std::string_view kind_of(StayChange::Kind kind) {
  switch (kind) {
  case StayChange::Kind::changed:
    return "changed";
  case StayChange::Kind::added:
    return "added";
  case StayChange::Kind::removed:
    return "removed";
  }
  return "changed";
}

Json piece_json(const CheckedRig& checked, const DerivedStay& stay, const Piece& piece) {
  const OrderLength order = order_length(checked.rig(), stay, piece);
  Json json;
  json["name"] = piece.name;
  json["line"] = checked.rig()[piece.material].name;
  json["state"] = name_of(checked.state(piece));
  json["ways_differ"] = is_disputed(checked, piece);
  json["reasons"] = Json::array();
  for (const DraftReason& reason : checked.held_by(piece))
    json["reasons"].push_back({{"reason", reason.reason}, {"mend", reason.mend}});
  json["body"] = with_x_json(piece.body.unknown, piece.body.known());
  json["cut"] = with_x_json(piece.cut.unknown, piece.cut.known());
  json["order_mm"] = json_millimetres(order.whole());
  return json;
}

} // namespace

Json place_json(const OpenBoat& boat, Span span) {
  const TextRange range = boat.range(span);
  return {{"file", boat.text(span.source).name()},
          {"begin", spot_json(range.begin)},
          {"end", spot_json(range.end)}};
}

Json edits_json(const OpenBoat& boat, const std::vector<TextEdit>& edits) {
  Json result = Json::array();
  for (const TextEdit& edit : edits)
    if (const auto source = boat.source(edit.file)) {
      const TextPlaces& places = boat.places(*source);
      result.push_back({{"place",
                         {{"file", edit.file},
                          {"begin", spot_json(places.at_byte(edit.begin))},
                          {"end", spot_json(places.at_byte(edit.end))}}},
                        {"replacement", edit.replacement}});
    }
  return result;
}

Json findings_json(const OpenBoat& boat) {
  Json files = Json::array();
  for (const FileFindings& file : findings_by_file(boat)) {
    Json findings = Json::array();
    for (const Diagnostic* finding : file.findings)
      findings.push_back(finding_json(boat, *finding));
    files.push_back({{"file", file.file}, {"findings", std::move(findings)}});
  }
  return {{"files", std::move(files)}, {"calculated", boat.compiled.checked.has_value()}};
}

Json proposals_json(const OpenBoat& boat, const Proposals& proposals) {
  Json all = Json::array();
  for (const Proposal& proposal : proposals.all)
    all.push_back({{"word", proposal.word},
                   {"sort", name_of(proposal.sort)},
                   {"detail", proposal.detail},
                   {"help", proposal.help},
                   {"insert", proposal.insert},
                   {"snippet", proposal.snippet},
                   {"wanted", proposal.preselect}});
  return {{"place", place_json(boat, proposals.span)}, {"proposals", std::move(all)}};
}

Json outline_json(const OpenBoat& boat, const std::vector<OutlineItem>& items) {
  Json result = Json::array();
  for (const OutlineItem& item : items)
    result.push_back({{"name", item.name},
                      {"detail", item.detail},
                      {"sort", name_of(item.sort)},
                      {"place", place_json(boat, item.span)},
                      {"name_place", place_json(boat, item.name_span)},
                      {"inside", outline_json(boat, item.inside)}});
  return result;
}

Json declarations_json(const OpenBoat& boat, const std::vector<WrittenDeclaration>& all) {
  Json result = Json::array();
  for (const WrittenDeclaration& declaration : all) {
    Json properties = Json::array();
    for (const WrittenProperty& property : declaration.properties)
      properties.push_back({{"name", property.name},
                            {"title", property.title},
                            {"written", property.written},
                            {"place", place_json(boat, property.span)}});
    result.push_back({{"kind", declaration.kind},
                      {"name", declaration.name},
                      {"title", declaration.title},
                      {"of", declaration.of},
                      {"on", declaration.on},
                      {"place", place_json(boat, declaration.span)},
                      {"block", place_json(boat, declaration.block)},
                      {"properties", std::move(properties)},
                      {"inside", declarations_json(boat, declaration.inside)}});
  }
  return result;
}

Json actions_json(const OpenBoat& boat, const std::vector<Action>& actions) {
  Json result = Json::array();
  for (const Action& action : actions)
    result.push_back({{"title", action.title},
                      {"certain", action.certain},
                      {"finding", action.finding != nullptr ? Json(action.finding->slug) : Json()},
                      {"edits", edits_json(boat, action.edits)}});
  return result;
}

Json numbers_json(const OpenBoat& boat, const std::vector<NumberEntry>& numbers) {
  Json result = Json::array();
  for (const NumberEntry& number : numbers) {
    Json json;
    json["state"] = name_of(number.state);
    json["of"] = number.of;
    json["property"] = number.property;
    json["type"] = number.row != nullptr ? type_word(number.row->type) : type_word(ValueType::any);
    json["unit"] = number.row != nullptr ? example_unit(*number.row) : std::string();
    json["range"] = number.row != nullptr ? range_words(*number.row) : std::string();
    json["help"] = number.row != nullptr ? std::string(number.row->help) : std::string();
    json["example"] = number.row != nullptr ? std::string(number.row->example) : std::string();
    json["written"] = number.written;
    json["words"] = number.words;
    json["mend"] = number.mend;
    json["pieces"] = number.pieces;
    json["place"] = place_json(boat, number.place);
    json["write"] = Json();
    if (number.write)
      json["write"] = {{"place", edits_json(boat, {*number.write})[0]["place"]},
                       {"before", number.before},
                       {"after", number.after}};
    result.push_back(std::move(json));
  }
  return result;
}

Json stays_json(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  Json result = Json::array();
  for (const DerivedStay& derived : checked.derived().stays) {
    const Stay& stay = rig[derived.stay];
    Json json;
    json["name"] = stay.name;
    json["title"] = stay.title;
    json["route"] = name_of(derived.route);
    json["pin_to_pin"] = with_x_json(derived.pin_to_pin.unknown, derived.pin_to_pin.known());
    json["measured"] = {{"between", measured_between(rig, stay)},
                        {"aloft", where_words(rig, stay, WhichEnd::upper)},
                        {"below", where_words(rig, stay, WhichEnd::lower)}};
    json["pieces"] = Json::array();
    for (const Piece& piece : derived.pieces)
      json["pieces"].push_back(piece_json(checked, derived, piece));
    json["adjusters"] = Json::array();
    for (const TakeUp& adjuster : derived.adjusters)
      json["adjusters"].push_back({{"part", rig[adjuster.part].name},
                                   {"set_mm", json_millimetres(adjuster.set.value)},
                                   {"to_tighten_mm", json_millimetres(adjuster.to_tighten)},
                                   {"to_slacken_mm", json_millimetres(adjuster.to_slacken)}});
    result.push_back(std::move(json));
  }
  return result;
}

Json papers_json(const std::vector<BackendPapers>& papers, bool with_bytes) {
  Json result = Json::array();
  for (const BackendPapers& made : papers) {
    Json files = Json::array();
    for (const OutputFile& file : made.files) {
      Json json = {{"name", file.name}, {"type", media_type(file.name)}};
      if (with_bytes)
        json["text"] = file.bytes;
      files.push_back(std::move(json));
    }
    result.push_back({{"back_end", made.backend},
                      {"summary", made.summary},
                      {"files", std::move(files)},
                      {"fault", made.fault}});
  }
  return result;
}

Json trial_json(const Trial& trial) {
  Json json;
  json["findings"] = findings_json(trial.boat);
  json["stays"] = Json::array();
  json["measure_again"] = Json::array();
  json["appear"] = Json::array();
  json["vanish"] = Json::array();
  json["changed"] = Json();
  if (!trial.change)
    return json;
  for (const StayChange& change : trial.change->stays) {
    // A stay of which a number is missing can not be compared; it is none that changes.
    if (change.kind == StayChange::Kind::changed && change.why.empty())
      continue;
    Json pieces = Json::array();
    for (const PieceChange& piece : change.pieces)
      pieces.push_back({{"name", piece.name},
                        {"body", changed_json(piece.body)},
                        {"cut", changed_json(piece.cut)},
                        {"fate", name_of(piece.fate)}});
    json["stays"].push_back({{"name", change.stay},
                             {"change", kind_of(change.kind)},
                             {"pin_to_pin", changed_json(change.pin_to_pin)},
                             {"pieces", std::move(pieces)}});
  }
  for (const OutdatedMeasurement& outdated : trial.change->outdated)
    json["measure_again"].push_back({{"name", outdated.stay},
                                     {"measured", outdated.measured},
                                     {"expected_mm", json_millimetres(outdated.expected)}});
  json["changed"] =
      !json["stays"].empty() || !trial.change->outdated.empty() || !trial.change->without_move.empty();
  // Findings of the boat as she is have their places in texts of hers, which are the same but for the
  // trial.
  const auto words = [](const Diagnostic& finding) -> Json {
    return {{"finding", finding.slug},
            {"severity", name_of(finding.severity)},
            {"subject", finding.subject},
            {"message", finding.message}};
  };
  for (const Diagnostic* finding : trial.findings->appeared)
    json["appear"].push_back(words(*finding));
  for (const FindingsChange::Changed& finding : trial.findings->changed) {
    json["appear"].push_back(words(*finding.is));
    json["vanish"].push_back(words(*finding.was));
  }
  for (const Diagnostic* finding : trial.findings->gone)
    json["vanish"].push_back(words(*finding));
  return json;
}

Json seal_check_json(const SealCheck& check) {
  return {{"seal", check.seal},
          {"files", check.files},
          {"altered", check.faults.altered},
          {"missing", check.faults.missing},
          {"extra", check.faults.extra},
          {"bad_lines", check.faults.bad_lines},
          {"not_checked", check.not_checked},
          {"version", check.version.empty() ? Json() : Json(check.version)}};
}

Json starts_json() {
  Json result = Json::array();
  for (const RigStart& start : rig_starts()) {
    Json numbers = Json::array();
    for (const AskedNumber& asked : asked_numbers())
      if (std::find(start.asks.begin(), start.asks.end(), asked.name) != start.asks.end())
        numbers.push_back({{"name", asked.name},
                           {"what", fmt::format(fmt::runtime(asked.what), start.second_mast)},
                           {"example", start.example.at(std::string(asked.name))}});
    result.push_back({{"rig", start.name},
                      {"title", start.title},
                      {"about", start.about},
                      {"measure_first", start.measure_first},
                      {"numbers", std::move(numbers)}});
  }
  return result;
}

} // namespace sheerpole::service
