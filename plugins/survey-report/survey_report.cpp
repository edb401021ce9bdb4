#include "plugins/survey-report/survey_report.hpp"

#include "backend/change/change_words.hpp"
#include "backend/diagram/rig_diagram.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "backend/page/document.hpp"
#include "backend/page/paper_files.hpp"
#include "backend/paper_words.hpp"
#include "base/byte_text.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "units/quantity_text.hpp"
#include "wording/papers/survey_report_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

namespace sheerpole {

namespace {

/// What a reader looks for first; asked for when it is not stated.
constexpr std::array<std::string_view, 6> identity{"builder", "hull-number", "launched",
                                                   "flag",    "home-port",   "owner"};
constexpr std::array<std::string_view, 9> of_survey{"date",    "by",   "qualification", "for",     "where",
                                                    "weather", "mast", "went",          "not-seen"};

/// "hull-number" as words.
std::string words_of(std::string_view name) {
  std::string words(name);
  std::replace(words.begin(), words.end(), '-', ' ');
  return words;
}

const Record* last_survey(const Rig& rig) {
  const Record* found = nullptr;
  for (const Record& record : rig.records)
    if (record.kind == RecordKind::survey)
      found = &record;
  return found;
}

void add_changes(const BackendRequest& request, Document& document) {
  document.blocks.emplace_back(
      DocumentHeading{say(SurveyReportPhrase::changes_since_previous_version), 2, "changes"});
  if (request.previous == nullptr) {
    document.blocks.emplace_back(DocumentText{say(SurveyReportPhrase::no_previous_version_was_given)});
    return;
  }
  document.blocks.emplace_back(
      DocumentText{say(SurveyReportPhrase::from, request.previous_name, request.name)});
  add_change(*request.previous, request.checked, document);
}

} // namespace

std::string where_looked(const Rig& rig, const Inspection& inspection) {
  return inspection.between.empty() ? say(SurveyReportPhrase::whole_stay)
                                    : joined(inspection.between, say(SurveyReportPhrase::from_part_to_part),
                                             [&](PartId part) { return rig[part].name; });
}

namespace {

/// "7 200 kg" of `7_200 kg`: the stroke between digits is how files write a long number.
std::string as_read(std::string_view text) {
  const auto digit = [&](std::size_t at) { return at < text.size() && text[at] >= '0' && text[at] <= '9'; };
  std::string read;
  for (std::size_t at = 0; at < text.size(); ++at)
    if (text[at] == '_' && at > 0 && digit(at - 1) && digit(at + 1))
      read += thin_blank; // no line breaks there
    else
      read += text[at];
  return read;
}

} // namespace

std::string shown_fact(const Particular& fact) {
  const bool counted =
      std::any_of(fact.text.begin(), fact.text.end(), [](char c) { return c >= '0' && c <= '9'; });
  // Where a name stands for the number, the number comes first.
  if (!counted && fact.value.value.dimension == Dimension{.length = 1})
    return fmt::format("{} ({})", length_text(Length::metres(fact.value.value.si)), fact.text);
  if (!counted && fact.value.value.dimension == Dimension{.angle = 1})
    return fmt::format("{} ({})", angle_text(fact.value.value.si), fact.text);
  const std::string text = as_read(fact.text);
  Provenance provenance = fact.value.provenance;
  provenance.written.clear(); // the text is what was written
  const bool says = provenance.source_class != SourceClass::unstated;
  return says ? text + " (" + source_words(provenance) + ")" : text;
}

void add_identity(const CheckedRig& checked, Document& document) {
  const Boat& boat = checked.rig().boat;
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::the_boat), 2, "the-boat"});
  DocumentFacts facts;
  facts.rows.emplace_back(say(SurveyReportPhrase::name), boat.title);
  if (!boat.sister_of.empty())
    facts.rows.emplace_back(say(SurveyReportPhrase::sister_ship), boat.sister_of);
  for (const std::string_view name : identity) {
    const Particular* fact = find_fact(boat.particulars, name);
    facts.rows.emplace_back(words_of(name), fact == nullptr ? "" : shown_fact(*fact));
  }
  for (const Particular& fact : boat.particulars)
    if (std::find(identity.begin(), identity.end(), fact.name) == identity.end())
      facts.rows.emplace_back(words_of(fact.name), shown_fact(fact));
  for (const Spar& spar : checked.rig().spars) {
    std::string words = spar.title.empty() ? std::string(name_of(spar.sort)) : spar.title;
    for (const Particular& fact : spar.particulars)
      words += "; " + words_of(fact.name) + " " + shown_fact(fact);
    facts.rows.emplace_back(say(SurveyReportPhrase::spar, spar.name), words);
  }
  document.blocks.emplace_back(std::move(facts));
}

void add_scope(const CheckedRig& checked, Document& document) {
  const Rig& rig = checked.rig();
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::scope_limits), 2, "scope"});
  document.blocks.emplace_back(DocumentText{say(SurveyReportPhrase::report_made_from_text_rig)});
  const Record* survey = last_survey(rig);
  DocumentFacts facts;
  for (const std::string_view name : of_survey) {
    std::string text = survey == nullptr ? "" : fact_text(survey->facts, name);
    facts.rows.emplace_back(words_of(name), std::move(text));
  }
  if (survey != nullptr && !fact_text(survey->facts, fact_names.note).empty())
    facts.rows.emplace_back(say(SurveyReportPhrase::note), fact_text(survey->facts, fact_names.note));
  document.blocks.emplace_back(DocumentText{survey == nullptr
                                                ? say(SurveyReportPhrase::no_inspection_recorded)
                                                : say(SurveyReportPhrase::last_inspection)});
  document.blocks.emplace_back(std::move(facts));

  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::what_was_not_seen), 3, "not-seen"});
  DocumentTable table{.caption = say(SurveyReportPhrase::stays_joints_not_inspected),
                      .columns = {{say(SurveyReportPhrase::stay), 2.4},
                                  {say(SurveyReportPhrase::what), 1.4},
                                  {say(SurveyReportPhrase::record), 2.4}}};
  std::string nobody;
  for (const Stay& stay : rig.stays) {
    bool looked_at = false;
    for (const Inspection& inspection : rig.inspections) {
      if (std::none_of(inspection.stays.begin(), inspection.stays.end(),
                       [&](StayId id) { return &rig[id] == &stay; }))
        continue;
      if (inspection.condition != InspectionCondition::not_accessible) {
        looked_at = true;
        continue;
      }
      table.rows.push_back({stay.name, where_looked(rig, inspection),
                            say(SurveyReportPhrase::not_accessible_on, inspection.date, inspection.by) +
                                led_by(": ", inspection.note)});
    }
    if (!looked_at)
      add_words(nobody, ", ", stay.name);
  }
  if (!nobody.empty())
    table.rows.push_back(
        {nobody, say(SurveyReportPhrase::whole_stay), say(SurveyReportPhrase::no_inspection_of_it)});
  if (table.rows.empty())
    table.caption = say(SurveyReportPhrase::every_stay_inspected);
  document.blocks.emplace_back(std::move(table));
}

void add_views(const CheckedRig& checked, Document& document) {
  constexpr double width = 180.0;
  constexpr double height = 225.0;
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::drawings), 2, "drawings"});
  if (checked.rig().points.empty()) {
    document.blocks.emplace_back(DocumentText{say(SurveyReportPhrase::rig_files_state_no_points)});
    return;
  }
  document.blocks.emplace_back(DocumentText{say(SurveyReportPhrase::on_screen_line_or_name)});
  for (const ViewKind kind : {ViewKind::side, ViewKind::front, ViewKind::deck})
    document.blocks.emplace_back(DocumentFigure{
        view_sheet(checked, kind, width, height, [](const Stay& stay) { return "#" + section_of(stay); }),
        ""});
}

void add_record(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::stated_for_record), 2, "record"});
  document.blocks.emplace_back(DocumentText{say(SurveyReportPhrase::what_rig_files_say_besides)});
  const Table record = record_table(checked);
  const std::vector<RecordedFact> facts = recorded_facts(checked);
  DocumentTable table{.caption = say(SurveyReportPhrase::as_stated),
                      .columns = {{say(SurveyReportPhrase::stated), 1.8},
                                  {say(SurveyReportPhrase::what), 1.0},
                                  {say(SurveyReportPhrase::as_stated_column), 3.0},
                                  {say(SurveyReportPhrase::known_by), 1.2},
                                  {say(SurveyReportPhrase::place), 1.2}}};
  for (std::size_t i = 0; i < facts.size(); ++i)
    if (!facts[i].of_boat)
      table.rows.push_back(record.rows[i]);
  if (table.rows.empty())
    table.caption = say(SurveyReportPhrase::nothing_else_stated_for_record);
  document.blocks.emplace_back(std::move(table));
}

void add_sources(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::files), 2, "files"});
  DocumentTable table{.caption = say(SurveyReportPhrase::what_report_was_made_from),
                      .columns = {{say(SurveyReportPhrase::file), 1.6},
                                  {say(SurveyReportPhrase::lines), 0.5, true},
                                  {say(SurveyReportPhrase::sha_256), 3.6}},
                      .notes = {say(SurveyReportPhrase::whoever_has_file_can_tell)}};
  for (std::size_t i = 0; i < checked.sources().size(); ++i) {
    const SourceText& text = checked.sources()[SourceId{static_cast<std::uint32_t>(i)}];
    table.rows.push_back({text.name(), std::to_string(text.line_count()), sha256(text.file_bytes())});
  }
  for (const Photograph& photograph : checked.photographs())
    table.rows.push_back({photograph.name, "", photograph.digest});
  document.blocks.emplace_back(std::move(table));
  const Table differences = differences_table(checked);
  if (differences.rows.empty())
    return;
  DocumentTable stated{
      .caption = differences.title, .columns = {}, .rows = differences.rows, .notes = differences.notes};
  for (const Column& column : differences.columns)
    stated.columns.push_back({column.heading, 1.0, column.right});
  document.blocks.emplace_back(std::move(stated));
}

void add_signatures(const CheckedRig&, Document& document) {
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::sign_off), 2, "sign-off"});
  document.blocks.emplace_back(DocumentNotice{say(SurveyReportPhrase::work_aloft_on_loaded_rigging)});
  document.blocks.emplace_back(DocumentText{say(SurveyReportPhrase::report_for_whoever_addressed_for)});
  document.blocks.emplace_back(DocumentToWrite{
      {say(SurveyReportPhrase::inspected_by_qualification), say(SurveyReportPhrase::for_word),
       say(SurveyReportPhrase::place_day), say(SurveyReportPhrase::recommendations_order), "", "",
       say(SurveyReportPhrase::signature)}});
}

std::string section_of(const Stay& stay) {
  return "stay-" + element_id(stay.name);
}

Document report_document(const BackendRequest& request) {
  const CheckedRig& checked = request.checked;
  const std::string boat = boat_title(checked);
  Document document;
  document.title = say(SurveyReportPhrase::standing_rigging, boat);
  document.about = say(SurveyReportPhrase::report_on_rigging, boat_and_revision(checked));
  if (!checked.rig().boat.report_date.empty())
    document.about += ", " + checked.rig().boat.report_date;
  document.foot = say(SurveyReportPhrase::survey_report, identity_words(checked));
  if (const std::string waiting = waiting_words(checked); !waiting.empty())
    document.draft = {waiting + "."};
  add_identity(checked, document);
  add_scope(checked, document);
  add_views(checked, document);
  add_findings(checked, document);
  add_changes(request, document);
  add_stays(checked, document);
  add_photographs(checked, document);
  add_assumptions(checked, document);
  add_checks(checked, document);
  add_record(checked, document);
  add_sources(checked, document);
  add_signatures(checked, document);
  return document;
}

BackendDescription SurveyReport::describe() const {
  return {.name = "survey-report",
          .summary = say(SurveyReportPhrase::whole_rig_for_surveyor_what),
          .outputs = {"survey-report.html"},
          .papers = {"survey-report.pdf"}};
}

OutputBundle SurveyReport::generate(const BackendRequest& request) const {
  OutputBundle bundle;
  add_document("survey-report", report_document(request), request, bundle);
  return bundle;
}

} // namespace sheerpole
