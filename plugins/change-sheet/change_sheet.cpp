#include "plugins/change-sheet/change_sheet.hpp"

#include "backend/change/change_words.hpp"
#include "backend/diagram/sheet.hpp"
#include "backend/diagram/stay_strips.hpp"
#include "backend/drawing/drawing.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "backend/json/json.hpp"
#include "backend/page/document.hpp"
#include "backend/page/paper_files.hpp"
#include "backend/paper_words.hpp"
#include "wording/length_words.hpp"
#include "wording/papers/change_sheet_words.hpp"
#include "wording/say.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t name_width = 26;
constexpr std::size_t amount_width = 14;

void print_stay(const StayWords& words, TextPage& page) {
  page.rule('-');
  page.ends(words.name + led_by("   ", words.title), words.side.empty() ? words.kind : words.side);
  for (const std::string& why : words.why)
    page.wrapped(say(ChangeSheetPhrase::because_before), why);
  page.line("  " + padded("mm", name_width) + padded_left(say(ChangeSheetPhrase::was), amount_width) +
            padded_left(say(ChangeSheetPhrase::is), amount_width) +
            padded_left(say(ChangeSheetPhrase::change), amount_width));
  for (const LengthRow& row : words.lengths)
    page.line("  " + padded(row.name, name_width) + padded_left(row.was, amount_width) +
              padded_left(row.is, amount_width) + padded_left(row.change, amount_width));
  for (const std::string& line : words.lines)
    page.wrapped(say(ChangeSheetPhrase::line_behind), line);
}

void print_list(std::string_view heading, const std::vector<std::string>& lines, TextPage& page) {
  if (lines.empty())
    return;
  page.rule('-');
  page.line(heading);
  for (const std::string& line : lines)
    page.wrapped("  ", line);
}

std::vector<std::string> messages(const std::vector<const Diagnostic*>& findings) {
  std::vector<std::string> lines;
  for (const Diagnostic* finding : findings)
    lines.push_back(finding->message + " (" + finding->slug + ")");
  return lines;
}

Json inputs_json(const std::vector<ChangedInput>& inputs) {
  Json json = Json::array();
  for (const ChangedInput& input : inputs)
    json.push_back({{"subject", say(input.subject)},
                    {"property", say(input.property)},
                    {"was", input.was},
                    {"is", input.is}});
  return json;
}

/// `{was, is, change_mm}`, each `{unknown, known_mm}`: with `unknown` it is X and so much more. The members
/// with `plus_x` say the same as they did before there was one spelling of it.
Json length_json(const ChangedLength& length) {
  return {{"was", length_json(length.unknown_was, length.was)},
          {"is", length_json(length.unknown_is, length.is)},
          {"was_mm", json_millimetres(length.was)},
          {"was_plus_x", length.unknown_was},
          {"is_mm", json_millimetres(length.is)},
          {"is_plus_x", length.unknown_is},
          {"change_mm", length.comparable ? Json(json_millimetres(length.difference())) : Json()}};
}

/// The cut of a piece; what lacks an input is none.
Json cut_json(const PieceChange& piece) {
  Json json = length_json(piece.cut);
  if (piece.incomplete_was)
    json["was_mm"] = json["was"]["known_mm"] = nullptr;
  if (piece.incomplete_is)
    json["is_mm"] = json["is"]["known_mm"] = nullptr;
  if (piece.incomplete_was || piece.incomplete_is)
    json["change_mm"] = nullptr;
  return json;
}

Json range_json(const std::optional<AdjusterRange>& range) {
  if (!range)
    return {};
  return {{"to_tighten_mm", json_millimetres(range->to_tighten)},
          {"to_slacken_mm", json_millimetres(range->to_slacken)}};
}

Json piece_json(const Rig& is, const PieceChange& piece) {
  return {{"name", piece.name},
          {"line_was", piece.line_was},
          {"line_is", piece.line_is},
          {"body", length_json(piece.body)},
          {"cut", cut_json(piece)},
          {"as_made", piece.as_made},
          {"too_long_mm", json_millimetres(piece.too_long)},
          {"fate", name_of(piece.fate)},
          {"words", say(is, piece.why)}};
}

Json stay_json(const Rig& is, const StayChange& stay) {
  Json pieces = Json::array();
  for (const PieceChange& piece : stay.pieces)
    pieces.push_back(piece_json(is, piece));
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

Json changed_json(const std::vector<FindingsChange::Changed>& findings) {
  Json json = Json::array();
  for (const FindingsChange::Changed& one : findings)
    json.push_back({{"slug", one.is->slug},
                    {"subject", one.is->subject},
                    {"was", one.was->message},
                    {"is", one.is->message}});
  return json;
}

Document change_document(const BackendRequest& request) {
  Document document;
  document.title = say(ChangeSheetPhrase::change_sheet_of, boat_title(request.checked));
  document.about = say(ChangeSheetPhrase::from_to, request.previous_name, request.name);
  document.foot = say(ChangeSheetPhrase::new_rig, identity_words(request.checked));
  if (const std::string waiting = waiting_words(request.checked); !waiting.empty())
    document.draft = {say(ChangeSheetPhrase::new_rig_begins, waiting)};
  document.blocks.emplace_back(DocumentNotice{say(ChangeSheetPhrase::one_stay_at_time_and)});
  document.blocks.emplace_back(DocumentHeading{say(ChangeSheetPhrase::what_changes), 2, "changes"});
  add_change(*request.previous, request.checked, document);
  document.blocks.emplace_back(DocumentText{say(ChangeSheetPhrase::stays_that_are_not_named), true});
  return document;
}

/// All changed stays below each other on one sheet.
Drawing change_drawing(const CheckedRig& checked, const Document& document, const RigChange& change) {
  constexpr double margin = 10.0;
  Drawing sheet;
  sheet.width = 200.0;
  sheet.title = document.title;
  sheet.description = document.about;
  double y = margin;
  for (const DocumentBlock& block : document.blocks)
    if (const auto* figure = std::get_if<DocumentFigure>(&block)) {
      ShapeGroup strip = placed(figure->drawing.content, {margin, y}, 1.0);
      strip.id.clear(); // there are several of a word
      sheet.content.add(std::move(strip));
      y += figure->drawing.height + 6.0;
    }
  if (y == margin) {
    sheet.content.add(
        TextShape{{margin, y + 4.0}, no_stay_words(checked, change), 4.0, TextAnchor::start, false, ""});
    y += 8.0;
  }
  sheet.height = y + margin + sheet_foot_height;
  draw_sheet_foot(say(ChangeSheetPhrase::change_sheet),
                  say(ChangeSheetPhrase::new_rig_of, identity_words(checked)), edition_words(checked), "",
                  sheet);
  return sheet;
}

} // namespace

std::string change_text(const BackendRequest& request) {
  const CheckedRig& was = *request.previous;
  const CheckedRig& is = request.checked;
  const RigChange change = change_of(was, is);
  TextPage page;
  page.ends(say(ChangeSheetPhrase::change_sheet_capitals, boat_title(is)),
            is.draft_reasons().empty() ? "" : say(ChangeSheetPhrase::draft));
  page.wrapped(say(ChangeSheetPhrase::from), request.previous_name);
  page.wrapped(say(ChangeSheetPhrase::to), request.name);
  page.rule('=');
  page.wrapped("", say(ChangeSheetPhrase::stays_that_are_not_named_here));
  const std::vector<StayWords> stays = stay_words(was, is, change);
  if (stays.empty())
    page.wrapped("", no_stay_words(is, change));
  for (const StayWords& words : stays)
    print_stay(words, page);
  print_list(say(ChangeSheetPhrase::measure_again_place_moved_under), outdated_words(change), page);
  std::vector<std::string> unmoved;
  for (const ChangedInput& input : change.without_move)
    unmoved.push_back(input_words(input));
  print_list(say(ChangeSheetPhrase::stated_otherwise_and_moves_no), unmoved, page);
  print_list(say(ChangeSheetPhrase::parts), parts_words(change), page);
  print_list(say(ChangeSheetPhrase::line_to_order), order_words(is, change), page);
  const FindingsChange findings = findings_change(was, is);
  print_list(say(ChangeSheetPhrase::findings_that_say_something_else), changed_messages(findings), page);
  print_list(say(ChangeSheetPhrase::findings_that_are_new), messages(findings.appeared), page);
  print_list(say(ChangeSheetPhrase::findings_that_are_gone), messages(findings.gone), page);
  return page.text();
}

std::string change_json(const BackendRequest& request) {
  const CheckedRig& was = *request.previous;
  const CheckedRig& is = request.checked;
  const RigChange change = change_of(was, is);
  const FindingsChange findings = findings_change(was, is);
  Json stays = Json::array();
  for (const StayChange& stay : change.stays)
    stays.push_back(stay_json(is.rig(), stay));
  Json again = Json::array();
  for (const OutdatedMeasurement& one : change.outdated)
    again.push_back({{"stay", one.stay},
                     {"expected_change_mm", json_millimetres(one.expected)},
                     {"reading", one.measured},
                     {"stated", one.stated},
                     {"because", inputs_json(one.why)}});
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
  return write_json({{"format", "sheerpole-change-sheet"},
                     {"version", 1},
                     {"from", request.previous_name},
                     {"to", request.name},
                     {"boat", is.rig().boat.title},
                     {"draft", !is.draft_reasons().empty()},
                     {"stays", std::move(stays)},
                     {"measure_again", std::move(again)},
                     {"without_move", inputs_json(change.without_move)},
                     {"parts", std::move(parts)},
                     {"lines_to_order", std::move(lines)},
                     {"findings_new", findings_json(findings.appeared)},
                     {"findings_gone", findings_json(findings.gone)},
                     {"findings_changed", changed_json(findings.changed)}});
}

BackendDescription ChangeSheet::describe() const {
  return {.name = "change-sheet",
          .summary = say(ChangeSheetPhrase::against_another_rig_stays_that),
          .outputs = {},
          .sometimes = {"change-sheet.txt", "change-sheet.json", "change-sheet.svg", "change-sheet.html"},
          .papers = {"change-sheet.pdf"}};
}

OutputBundle ChangeSheet::generate(const BackendRequest& request) const {
  if (request.previous == nullptr)
    return {};
  const Document document = change_document(request);
  const CheckedRig& was = *request.previous;
  const RigChange change = change_of(was, request.checked);
  OutputBundle bundle;
  bundle.files.push_back(
      {"change-sheet.txt",
       with_foot(change_text(request), say(ChangeSheetPhrase::new_rig, identity_words(request.checked)))});
  bundle.files.push_back({"change-sheet.json", change_json(request)});
  bundle.files.push_back(
      {"change-sheet.svg", write_svg(change_drawing(request.checked, document, change))});
  add_document("change-sheet", document, request, bundle);
  return bundle;
}

} // namespace sheerpole
