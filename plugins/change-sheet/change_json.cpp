#include "plugins/change-sheet/change_sheet.hpp"

namespace sheerpole {

namespace {

Json inputs_json(const std::vector<ChangedInput>& inputs) {
  Json json = Json::array();
  for (const ChangedInput& input : inputs)
    json.push_back(
        {{"subject", input.subject}, {"property", input.property}, {"was", input.was}, {"is", input.is}});
  return json;
}

/// With `plus_x` the unknown length X is to be added.
Json length_json(const ChangedLength& length) {
  return {{"was_mm", json_millimetres(length.was)},
          {"was_plus_x", length.unknown_was},
          {"is_mm", json_millimetres(length.is)},
          {"is_plus_x", length.unknown_is},
          {"change_mm", length.comparable ? Json(json_millimetres(length.difference())) : Json()}};
}

Json range_json(const std::optional<AdjusterRange>& range) {
  if (!range)
    return {};
  return {{"to_tighten_mm", json_millimetres(range->to_tighten)},
          {"to_slacken_mm", json_millimetres(range->to_slacken)}};
}

Json piece_json(const PieceChange& piece) {
  return {{"name", piece.name},
          {"line_was", piece.line_was},
          {"line_is", piece.line_is},
          {"body", length_json(piece.body)},
          {"cut", length_json(piece.cut)},
          {"too_long_mm", json_millimetres(piece.too_long)},
          {"fate", name_of(piece.fate)},
          {"words", piece.words}};
}

Json stay_json(const StayChange& stay) {
  Json pieces = Json::array();
  for (const PieceChange& piece : stay.pieces)
    pieces.push_back(piece_json(piece));
  return {{"stay", stay.stay},
          {"title", stay.title},
          {"kind", stay.kind == StayChange::Kind::added     ? "added"
                   : stay.kind == StayChange::Kind::removed ? "removed"
                                                            : "changed"},
          {"because", inputs_json(stay.why)},
          {"pin_to_pin", length_json(stay.pin_to_pin)},
          {"body", length_json(stay.body)},
          {"adjusters_were", range_json(stay.range_was)},
          {"adjusters_are", range_json(stay.range_is)},
          {"pieces", std::move(pieces)}};
}

Json findings_json(const std::vector<const Diagnostic*>& findings) {
  Json json = Json::array();
  for (const Diagnostic* finding : findings)
    json.push_back({{"slug", finding->slug}, {"subject", finding->subject}, {"message", finding->message}});
  return json;
}

} // namespace

std::string change_json(const BackendRequest& request) {
  const CheckedRig& was = *request.previous;
  const CheckedRig& is = request.checked;
  const RigChange change = compare_rigs(was.rig(), was.derived(), is.rig(), is.derived());
  const FindingsChange findings = findings_change(was, is);
  Json stays = Json::array();
  for (const StayChange& stay : change.stays)
    stays.push_back(stay_json(stay));
  Json parts = Json::array();
  for (const PartCount& part : change.parts)
    parts.push_back({{"part", part.part}, {"title", part.title}, {"was", part.was}, {"is", part.is}});
  Json lines = Json::array();
  for (const LineToOrder& line : change.lines)
    lines.push_back({{"line", line.line},
                     {"title", line.title},
                     {"pieces", line.pieces},
                     {"cut_mm", json_millimetres(line.cut)},
                     {"complete", line.complete}});
  return write_json({{"from", request.previous_name},
                     {"to", request.name},
                     {"boat", is.rig().boat.title},
                     {"draft", !is.draft_reasons().empty()},
                     {"stays", std::move(stays)},
                     {"without_move", inputs_json(change.without_move)},
                     {"parts", std::move(parts)},
                     {"lines_to_order", std::move(lines)},
                     {"findings_new", findings_json(findings.appeared)},
                     {"findings_gone", findings_json(findings.gone)}});
}

} // namespace sheerpole
