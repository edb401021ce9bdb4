#include "calculate/facts.hpp"
#include "plugins/survey-report/survey_report.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/survey_report_words.hpp"

#include <algorithm>

namespace sheerpole {

std::string_view name_of(FindingClass finding_class) {
  switch (finding_class) {
  case FindingClass::now:
    return say(SurveyReportPhrase::now);
  case FindingClass::before_sailing:
    return say(SurveyReportPhrase::before_sailing);
  case FindingClass::within_a_year:
    return say(SurveyReportPhrase::within_year);
  case FindingClass::note:
    break;
  }
  return say(SurveyReportPhrase::be_noted);
}

const std::vector<ClassRow>& class_rows() {
  using enum FindingClass;
  // Our own judgement, no source. Now: what lets go by itself, or was already said to be renewed. Within a
  // year: what is told by the calendar, or comes slowly.
  static const std::vector<ClassRow> rows{{"marked-renew", now},
                                          {"pin-not-secured", now},
                                          {"splice-not-locked", now},
                                          {"thread-engagement-low", now},
                                          {"stud-engaged-short", now},
                                          {"lashing-weak", now},
                                          {"shared-pin-weak", now},
                                          {"line-old", within_a_year},
                                          {"hardware-old", within_a_year},
                                          {"take-up-low", within_a_year},
                                          {"adjuster-mostly-closed", within_a_year},
                                          {"creep-load-high", within_a_year},
                                          {"metals-differ", within_a_year},
                                          {"measured-wins", note},
                                          {"tape-sags", note},
                                          {"cord-not-used", note},
                                          {"cord-pull-lost", note},
                                          {"error-not-waived", note},
                                          {"foretriangle-differs", note}};
  return rows;
}

FindingClass class_of(const Diagnostic& finding) {
  if (finding.severity == Severity::note)
    return FindingClass::note;
  const auto& rows = class_rows();
  const auto found =
      std::find_if(rows.begin(), rows.end(), [&](const ClassRow& row) { return row.slug == finding.slug; });
  return found == rows.end() ? FindingClass::before_sailing : found->finding_class;
}

namespace {

CheckTotals totals_of(const CheckedRig& checked) {
  CheckTotals totals;
  for (const CheckResult& result : checked.results())
    totals.add(result.outcome);
  return totals;
}

/// What was found and what could not be looked for, in one line: no findings beside many checks that were
/// not made would mislead.
std::string summary_of(const CheckedRig& checked, const CheckTotals& totals) {
  const auto open = std::count_if(checked.findings().begin(), checked.findings().end(),
                                  [](const Diagnostic& finding) { return finding.waived.empty(); });
  const std::string found = open == 0   ? say(SurveyReportPhrase::no_findings)
                            : open == 1 ? say(SurveyReportPhrase::one_finding)
                                        : say(SurveyReportPhrase::findings_counted, open);
  if (totals.not_checked == 0)
    return say(SurveyReportPhrase::all_checks_could_be_made, found, checked.results().size());
  return say(SurveyReportPhrase::checks_could_not_be_made, found, totals.not_checked,
             checked.results().size());
}

/// Of whom a finding is.
std::string about(const Diagnostic& finding) {
  return finding.subject.empty() ? say(SurveyReportPhrase::the_rig) : finding.subject;
}

/// What was found, with the name of the finding.
std::string found_words(const Diagnostic& finding) {
  return finding.message + " (" + finding.slug + ")";
}

} // namespace

void add_findings(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::findings_begins), 2, "findings"});
  const CheckTotals totals = totals_of(checked);
  document.blocks.emplace_back(DocumentNotice{summary_of(checked, totals)});
  document.blocks.emplace_back(DocumentText{say(SurveyReportPhrase::sheerpole_sorts_findings)});
  for (const FindingClass one : finding_classes) {
    DocumentTable table{.caption = std::string(name_of(one)),
                        .columns = {{say(SurveyReportPhrase::about), 1.4},
                                    {say(SurveyReportPhrase::what_was_found), 3.4},
                                    {say(SurveyReportPhrase::why_matters), 2.6},
                                    {say(SurveyReportPhrase::class_word), 0.8}}};
    for (const Diagnostic& finding : checked.findings())
      if (finding.waived.empty() && class_of(finding) == one)
        table.rows.push_back({about(finding), found_words(finding), finding.why, ""});
    if (table.rows.empty())
      table.caption = totals.not_checked > 0
                          ? say(SurveyReportPhrase::no_findings_among_checks_could, name_of(one))
                          : say(SurveyReportPhrase::no_findings_in, name_of(one));
    document.blocks.emplace_back(std::move(table));
  }
  DocumentTable waived{.caption = say(SurveyReportPhrase::left_by_decision),
                       .columns = {{say(SurveyReportPhrase::about), 1.4},
                                   {say(SurveyReportPhrase::what_was_found), 3.4},
                                   {say(SurveyReportPhrase::who_why_until_when), 3.0}}};
  for (const Diagnostic& finding : checked.findings())
    if (!finding.waived.empty())
      waived.rows.push_back({about(finding), found_words(finding), finding.waived});
  if (!waived.rows.empty())
    document.blocks.emplace_back(std::move(waived));
}

void add_assumptions(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::assumptions), 2, "assumptions"});
  DocumentTable drafts{.caption = say(SurveyReportPhrase::lengths_drafts),
                       .columns = {{say(SurveyReportPhrase::piece), 1.3},
                                   {say(SurveyReportPhrase::because), 2.6},
                                   {say(SurveyReportPhrase::what_settles), 2.6}}};
  for (const DraftReason& reason : checked.draft_reasons())
    drafts.rows.push_back({reason.subject, reason.reason, reason.mend});
  if (drafts.rows.empty())
    drafts.caption = say(SurveyReportPhrase::no_length_rests_on_number);
  document.blocks.emplace_back(std::move(drafts));

  // How every number of the files is known, from the table of all of them.
  const Table sources = sources_table(checked);
  DocumentTable assumed{.caption = say(SurveyReportPhrase::numbers_assumed),
                        .columns = {{say(SurveyReportPhrase::what), 2.6},
                                    {say(SurveyReportPhrase::value), 1.4},
                                    {say(SurveyReportPhrase::on_what_grounds), 2.4},
                                    {say(SurveyReportPhrase::place), 1.4}}};
  std::vector<std::pair<std::string, std::size_t>> classes;
  for (const std::vector<std::string>& row : sources.rows) {
    const std::string& known = row[3];
    auto found = classes.begin();
    while (found != classes.end() && found->first != known)
      ++found;
    if (found == classes.end())
      classes.emplace_back(known, 1);
    else
      ++found->second;
    if (known == name_of(SourceClass::assumed))
      assumed.rows.push_back({row[0], row[1], row[4], row[5]});
  }
  if (assumed.rows.empty())
    assumed.caption = say(SurveyReportPhrase::no_number_marked_as_assumed);
  document.blocks.emplace_back(std::move(assumed));
  DocumentTable counted{
      .caption = say(SurveyReportPhrase::how_numbers_files_known),
      .columns = {{say(SurveyReportPhrase::known_as), 2.0}, {say(SurveyReportPhrase::numbers), 1.0, true}}};
  for (const auto& [known, count] : classes)
    counted.rows.push_back({known, std::to_string(count)});
  if (counted.rows.empty())
    counted.caption = say(SurveyReportPhrase::files_state_no_numbers);
  document.blocks.emplace_back(std::move(counted));
}

void add_checks(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::checks), 2, "checks"});
  const Table totals = checks_table(checked);
  DocumentTable table{.caption = say(SurveyReportPhrase::results_every_check),
                      .columns = {{say(SurveyReportPhrase::check), 2.0},
                                  {say(SurveyReportPhrase::pass), 0.7, true},
                                  {say(SurveyReportPhrase::finding), 0.8, true},
                                  {say(SurveyReportPhrase::not_checked), 0.9, true},
                                  {say(SurveyReportPhrase::waived), 0.8, true},
                                  {say(SurveyReportPhrase::limits), 3.0}},
                      .rows = totals.rows,
                      .notes = totals.notes};
  document.blocks.emplace_back(std::move(table));
  DocumentTable unknown{.caption = say(SurveyReportPhrase::not_checked_because_something_not),
                        .columns = {{say(SurveyReportPhrase::about), 1.6},
                                    {say(SurveyReportPhrase::check), 1.6},
                                    {say(SurveyReportPhrase::what_missing), 3.4}}};
  for (const CheckResult& result : checked.results())
    if (result.outcome == CheckOutcome::not_checked)
      unknown.rows.push_back({result.subject, result.check, result.words});
  if (unknown.rows.empty())
    unknown.caption = say(SurveyReportPhrase::every_check_had_its_numbers);
  document.blocks.emplace_back(std::move(unknown));
  const Table loads = loads_table(checked);
  if (!loads.rows.empty()) {
    DocumentTable screening{
        .caption = loads.title, .columns = {}, .rows = loads.rows, .notes = loads.notes};
    for (const Column& column : loads.columns)
      screening.columns.push_back({column.heading, column.heading == "how" ? 2.6 : 1.2, column.right});
    document.blocks.emplace_back(std::move(screening));
  }
}

} // namespace sheerpole
