#include "calculate/facts.hpp"
#include "plugins/survey-report/survey_report.hpp"
#include "wording/model_words.hpp"

#include <algorithm>

namespace sheerpole {

std::string_view name_of(FindingClass finding_class) {
  switch (finding_class) {
  case FindingClass::now:
    return "Now";
  case FindingClass::before_sailing:
    return "Before sailing";
  case FindingClass::within_a_year:
    return "Within a year";
  case FindingClass::note:
    break;
  }
  return "To be noted";
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

void add_findings(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{"Findings", 2, "findings"});
  document.blocks.emplace_back(DocumentText{
      "In four classes, in which Sheerpole puts a finding by what kind it is and without having seen the "
      "boat. Whoever signs puts each where it belongs: the last column is for that."});
  for (const FindingClass one : finding_classes) {
    DocumentTable table{
        .caption = std::string(name_of(one)),
        .columns = {{"about", 1.4}, {"what was found", 3.4}, {"why it matters", 2.6}, {"class", 0.8}}};
    for (const Diagnostic& finding : checked.findings())
      if (finding.waived.empty() && class_of(finding) == one)
        table.rows.push_back({finding.subject.empty() ? "the rig" : finding.subject,
                              finding.message + " (" + finding.slug + ")", finding.why, ""});
    if (table.rows.empty())
      table.caption += ": nothing was found";
    document.blocks.emplace_back(std::move(table));
  }
  DocumentTable waived{.caption = "Left standing by decision of a person",
                       .columns = {{"about", 1.4}, {"what was found", 3.4}, {"who, why, until when", 3.0}}};
  for (const Diagnostic& finding : checked.findings())
    if (!finding.waived.empty())
      waived.rows.push_back({finding.subject.empty() ? "the rig" : finding.subject,
                             finding.message + " (" + finding.slug + ")", finding.waived});
  if (!waived.rows.empty())
    document.blocks.emplace_back(std::move(waived));
}

void add_assumptions(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{"Assumptions", 2, "assumptions"});
  DocumentTable drafts{.caption = "Lengths that are drafts",
                       .columns = {{"piece", 1.3}, {"because", 2.6}, {"what settles it", 2.6}}};
  for (const DraftReason& reason : checked.draft_reasons())
    drafts.rows.push_back({reason.subject, reason.reason, reason.mend});
  if (drafts.rows.empty())
    drafts.caption = "No length rests on a number that is assumed or missing.";
  document.blocks.emplace_back(std::move(drafts));

  // How every number of the files is known, from the table of all of them.
  const Table sources = sources_table(checked);
  DocumentTable assumed{
      .caption = "Numbers that are assumed",
      .columns = {{"what", 2.6}, {"value", 1.4}, {"on what grounds", 2.4}, {"place", 1.4}}};
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
    assumed.caption = "No number is marked as assumed.";
  document.blocks.emplace_back(std::move(assumed));
  DocumentTable counted{.caption = "How the numbers of the files are known",
                        .columns = {{"known as", 2.0}, {"numbers", 1.0, true}}};
  for (const auto& [known, count] : classes)
    counted.rows.push_back({known, std::to_string(count)});
  if (counted.rows.empty())
    counted.caption = "The files state no numbers.";
  document.blocks.emplace_back(std::move(counted));
}

void add_checks(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{"Checks", 2, "checks"});
  const Table totals = checks_table(checked);
  DocumentTable table{.caption = "What every check came to",
                      .columns = {{"check", 2.0},
                                  {"pass", 0.7, true},
                                  {"finding", 0.8, true},
                                  {"not checked", 0.9, true},
                                  {"waived", 0.8, true},
                                  {"limits", 3.0}},
                      .rows = totals.rows,
                      .notes = totals.notes};
  document.blocks.emplace_back(std::move(table));
  DocumentTable unknown{.caption = "Not checked, because something is not stated",
                        .columns = {{"about", 1.6}, {"check", 1.6}, {"what is missing", 3.4}}};
  for (const CheckResult& result : checked.results())
    if (result.outcome == CheckOutcome::not_checked)
      unknown.rows.push_back({result.subject, result.check, result.words});
  if (unknown.rows.empty())
    unknown.caption = "Nothing was left unchecked for want of a number.";
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
