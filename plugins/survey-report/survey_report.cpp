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
  document.blocks.emplace_back(DocumentHeading{"Changes since the previous version", 2, "changes"});
  if (request.previous == nullptr) {
    document.blocks.emplace_back(
        DocumentText{"No previous version was given to compare with; that nothing changed is not said."});
    return;
  }
  document.blocks.emplace_back(DocumentText{"From " + request.previous_name + " to " + request.name + "."});
  add_change(*request.previous, request.checked, document);
}

} // namespace

std::string where_looked(const Rig& rig, const Inspection& inspection) {
  return inspection.between.empty()
             ? "the whole stay"
             : joined(inspection.between, " to ", [&](PartId part) { return rig[part].name; });
}

std::string shown_fact(const Particular& fact) {
  Provenance provenance = fact.value.provenance;
  provenance.written.clear(); // the text is what was written
  const bool says = provenance.source_class != SourceClass::unstated;
  return says ? fact.text + " (" + source_words(provenance) + ")" : fact.text;
}

void add_identity(const CheckedRig& checked, Document& document) {
  const Boat& boat = checked.rig().boat;
  document.blocks.emplace_back(DocumentHeading{"The boat", 2, "the-boat"});
  DocumentFacts facts;
  facts.rows.emplace_back("name", boat.title);
  if (!boat.sister_of.empty())
    facts.rows.emplace_back("sister ship of", boat.sister_of);
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
    facts.rows.emplace_back("spar " + spar.name, words);
  }
  document.blocks.emplace_back(std::move(facts));
}

void add_scope(const CheckedRig& checked, Document& document) {
  const Rig& rig = checked.rig();
  document.blocks.emplace_back(DocumentHeading{"Scope and limits", 2, "scope"});
  document.blocks.emplace_back(
      DocumentText{"This report is made from the text of the rig files that are named at its end, and from "
                   "nothing else. "
                   "Sheerpole works out lengths and compares what is stated; it has seen no boat and "
                   "judges none. A thing "
                   "that is not stated is not checked, and what is not checked has not passed."});
  const Record* survey = last_survey(rig);
  DocumentFacts facts;
  for (const std::string_view name : of_survey) {
    std::string text = survey == nullptr ? "" : fact_text(survey->facts, name);
    facts.rows.emplace_back(words_of(name), std::move(text));
  }
  if (survey != nullptr && !fact_text(survey->facts, fact_names.note).empty())
    facts.rows.emplace_back("note", fact_text(survey->facts, fact_names.note));
  document.blocks.emplace_back(DocumentText{survey == nullptr
                                                ? "No day of looking her over is stated; to be filled in:"
                                                : "The last time that she was looked over:"});
  document.blocks.emplace_back(std::move(facts));

  document.blocks.emplace_back(DocumentHeading{"What was not seen", 3, "not-seen"});
  DocumentTable table{.caption = "Stays and joints that nobody is recorded to have looked at",
                      .columns = {{"stay", 2.4}, {"what", 1.4}, {"record", 2.4}}};
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
      table.rows.push_back(
          {stay.name, where_looked(rig, inspection),
           "not accessible on " + inspection.date + ", " + inspection.by + led_by(": ", inspection.note)});
    }
    if (!looked_at)
      add_words(nobody, ", ", stay.name);
  }
  if (!nobody.empty())
    table.rows.push_back({nobody, "the whole stay", "no entry says that anybody looked at it"});
  if (table.rows.empty())
    table.caption = "Every stay has an entry of somebody who looked at it.";
  document.blocks.emplace_back(std::move(table));
}

void add_views(const CheckedRig& checked, Document& document) {
  constexpr double width = 180.0;
  constexpr double height = 225.0;
  document.blocks.emplace_back(DocumentHeading{"Drawings", 2, "drawings"});
  if (checked.rig().points.empty()) {
    document.blocks.emplace_back(
        DocumentText{"The rig files state no points, so there is no view to draw."});
    return;
  }
  document.blocks.emplace_back(DocumentText{"On a screen the line or the name of a stay leads to its "
                                            "section. Do not take lengths from a drawing: "
                                            "a view shows a stay shorter than it is."});
  for (const ViewKind kind : {ViewKind::side, ViewKind::front, ViewKind::deck})
    document.blocks.emplace_back(DocumentFigure{
        view_sheet(checked, kind, width, height, [](const Stay& stay) { return "#" + section_of(stay); }),
        ""});
}

void add_record(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{"Stated for the record", 2, "record"});
  document.blocks.emplace_back(DocumentText{
      "What the rig files say besides, as they say it. No length, check or order rests on it. What is "
      "stated of the boat and her spars stands at the head of this report."});
  const Table record = record_table(checked);
  const std::vector<RecordedFact> facts = recorded_facts(checked);
  DocumentTable table{
      .caption = "As stated",
      .columns = {
          {"stated of", 1.8}, {"what", 1.0}, {"as stated", 3.0}, {"known by", 1.2}, {"place", 1.2}}};
  for (std::size_t i = 0; i < facts.size(); ++i)
    if (!facts[i].of_boat)
      table.rows.push_back(record.rows[i]);
  if (table.rows.empty())
    table.caption = "Nothing else is stated for the record.";
  document.blocks.emplace_back(std::move(table));
}

void add_sources(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{"Files", 2, "files"});
  DocumentTable table{.caption = "What this report was made from",
                      .columns = {{"file", 1.6}, {"lines", 0.5, true}, {"SHA-256", 3.6}},
                      .notes = {"Whoever has a file can tell by its SHA-256 (FIPS 180-4) whether it is the "
                                "one that was used: sha256sum FILE."}};
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
  document.blocks.emplace_back(DocumentHeading{"Sign-off", 2, "sign-off"});
  document.blocks.emplace_back(DocumentNotice{
      "Work aloft and on loaded rigging can kill. One stay at a time; hold the mast by something else "
      "meanwhile; look again at every pin before the boat sails. Local codes and a licensed professional "
      "come before this report."});
  document.blocks.emplace_back(
      DocumentText{"This report is for whoever it is addressed to and for nobody else. It speaks of the "
                   "day on which the "
                   "boat was looked at; it is no promise of what the rigging will stand."});
  document.blocks.emplace_back(DocumentToWrite{{"Looked at by, qualification:", "For:", "Place, day:",
                                                "Recommendations, in order:", "", "", "Signature:"}});
}

std::string section_of(const Stay& stay) {
  return "stay-" + element_id(stay.name);
}

Document report_document(const BackendRequest& request) {
  const CheckedRig& checked = request.checked;
  const std::string boat = boat_title(checked);
  Document document;
  document.title = "Standing rigging of " + boat;
  document.about = "Report on the rigging of " + boat_and_revision(checked);
  if (!checked.rig().boat.report_date.empty())
    document.about += ", " + checked.rig().boat.report_date;
  document.foot = "Survey report, " + identity_words(checked);
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
          .summary = "the whole rig for a surveyor: what is up there, how it is known, what was found",
          .outputs = {"survey-report.html"},
          .papers = {"survey-report.pdf"}};
}

OutputBundle SurveyReport::generate(const BackendRequest& request) const {
  OutputBundle bundle;
  add_document("survey-report", report_document(request), request, bundle);
  return bundle;
}

} // namespace sheerpole
