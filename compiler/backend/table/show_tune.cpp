#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/table/tune_tables.hpp"
#include "model/fact_name.hpp"
#include "wording/papers/tune_sheet_words.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

/// The report, or the table that says what is in the way.
Table shown(const CheckedRig& checked, TuneReport& report,
            Table (*build)(const CheckedRig&, const TuneReport&)) {
  Table table = report.tuned.stands() ? without_empty_columns(build(checked, report))
                                      : tune_lacking_table(checked, report.tuned);
  for (const std::string& reason : tune_draft_words(checked, report.tuned.model))
    table.notes.insert(table.notes.begin(), say(TuneSheetPhrase::draft_capitals, reason));
  table.notes.insert(table.notes.end(), tune_cautions().begin(), tune_cautions().end());
  return table;
}

/// What each wish states, as written.
std::vector<std::string> wishes_as_written(const CheckedRig& checked) {
  std::vector<std::string> result;
  for (const Record& record : checked.rig().records) {
    if (record.kind != RecordKind::tension_wish && record.kind != RecordKind::mast_wish)
      continue;
    std::string words;
    for (const Particular& fact : record.facts)
      if (fact.name != fact_names.note.text)
        add_words(words, ", ",
                  fact.name + " " +
                      (fact.value.provenance.written.empty() ? fact.text : fact.value.provenance.written));
    result.push_back(say(TuneSheetPhrase::wished_of, record.of, words));
  }
  return result;
}

TuneReport standing(const CheckedRig& checked) {
  TuneReport report;
  report.tuned = tuned_rig(checked.rig(), checked.derived());
  return report;
}

} // namespace

Table show_standing(const CheckedRig& checked) {
  TuneReport report = standing(checked);
  if (report.tuned.stands()) {
    report.doubt = tune_doubt(checked.rig(), checked.derived(), report.tuned, {});
    report.slips = tune_slips(checked.rig(), checked.derived(), report.tuned);
  }
  return shown(checked, report, standing_table);
}

Table show_tune(const CheckedRig& checked) {
  TuneReport report = standing(checked);
  if (report.tuned.stands())
    report.effects = turn_effects(checked.rig(), report.tuned);
  return shown(checked, report, turn_table);
}

Table show_turns(const CheckedRig& checked) {
  TuneReport report = standing(checked);
  if (report.tuned.stands())
    report.planning = turn_planning(checked.rig(), report.tuned);
  Table table = shown(checked, report, [](const CheckedRig& rig, const TuneReport& made) {
    Table table = turn_plan_table(rig, made);
    const Table wishes = wish_table(rig, made);
    for (const auto& row : wishes.rows)
      table.notes.push_back(say(TuneSheetPhrase::now_wished, row[0], row[1], row[2], row[3],
                                led_by(say(TuneSheetPhrase::with_these_turns), row[4])));
    table.notes.insert(table.notes.end(), wishes.notes.begin(), wishes.notes.end());
    return table;
  });
  const std::vector<std::string> written = wishes_as_written(checked);
  table.notes.insert(table.notes.begin(), written.begin(), written.end());
  return table;
}

Table show_days(const CheckedRig& checked) {
  TuneReport report = standing(checked);
  if (report.tuned.stands())
    report.later = tune_later(checked.rig(), checked.derived(), report.tuned);
  return shown(checked, report, later_table);
}

Table show_tune_doubt(const CheckedRig& checked) {
  TuneReport report = standing(checked);
  if (report.tuned.stands())
    report.doubt = tune_doubt(checked.rig(), checked.derived(), report.tuned, {});
  return shown(checked, report, tune_doubt_table);
}

Table show_tune_inputs(const CheckedRig& checked) {
  Table table = tune_inputs_table(checked, tune_model(checked.rig(), checked.derived()));
  table.notes.insert(table.notes.end(), tune_cautions().begin(), tune_cautions().end());
  return table;
}

} // namespace sheerpole
