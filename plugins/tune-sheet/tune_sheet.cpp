#include "plugins/tune-sheet/tune_sheet.hpp"

#include "backend/page/paper_files.hpp"
#include "backend/table/tune_tables.hpp"
#include "backend/table/tune_words.hpp"
#include "plugins/tune-sheet/standing_drawing.hpp"
#include "wording/papers/tune_sheet_words.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

/// Columns of numbers that a page takes beside the names of the rows.
constexpr std::size_t columns_across = 12;
/// Places of a spar nearer to each other than this are told once, but for its ends.
constexpr double told_apart_mm = 250.0;

DocumentTable document_table(const Table& table, std::vector<double> shares = {}) {
  DocumentTable made;
  made.caption = table.title;
  for (std::size_t i = 0; i < table.columns.size(); ++i)
    made.columns.push_back(
        {table.columns[i].heading, i < shares.size() ? shares[i] : 1.0, table.columns[i].right});
  made.rows = table.rows;
  made.notes = table.notes;
  return made;
}

/// Some columns of a table behind the first, which name its rows.
DocumentTable columns_of(const Table& table, std::size_t named, std::size_t from, std::size_t to, bool last,
                         const std::string& of) {
  Table part{.title = table.title + of, .columns = {}, .rows = {}, .notes = {}};
  std::vector<std::size_t> taken;
  std::vector<double> shares;
  for (std::size_t i = 0; i < table.columns.size(); ++i)
    if (i < named || (i >= from && i < to))
      taken.push_back(i);
  for (const std::size_t i : taken) {
    part.columns.push_back(table.columns[i]);
    shares.push_back(i == 0 ? 2.6 : i < named ? 1.5 : table.columns[i].right ? 1.0 : 4.0);
  }
  for (const auto& row : table.rows) {
    std::vector<std::string> cells;
    for (const std::size_t i : taken)
      cells.push_back(row[i]);
    part.rows.push_back(std::move(cells));
  }
  if (last)
    part.notes = table.notes;
  return document_table(part, shares);
}

/// A wide table as several that a page takes: tensions, then all that is of the masts.
void add_in_parts(const Table& table, std::size_t stays, Document& document) {
  constexpr std::size_t named = 2;
  for (std::size_t from = 0; from < stays; from += columns_across)
    document.blocks.emplace_back(columns_of(table, named, named + from,
                                            named + std::min(from + columns_across, stays), false,
                                            say(TuneSheetPhrase::kn)));
  document.blocks.emplace_back(
      columns_of(table, named, named + stays, table.columns.size(), true, say(TuneSheetPhrase::mm_mast)));
}

void add_heading(const std::string& text, Document& document) {
  document.blocks.emplace_back(DocumentHeading{text});
}

void add_bends(const CheckedRig& checked, const TunedRig& tuned, Document& document) {
  for (const TuneSpar& spar : tuned.model.spars) {
    if (spar.spreaders.empty())
      continue;
    const std::string& name = checked.rig().spars[spar.spar].name;
    DocumentTable table;
    table.caption = say(TuneSheetPhrase::bend_from_straight_line_between, name);
    table.columns = {{say(TuneSheetPhrase::from_heel_mm), 1.0, true},
                     {say(TuneSheetPhrase::forward), 1.0, true},
                     {say(TuneSheetPhrase::to_starboard), 1.0, true}};
    const auto& places = tuned.state.spars[spar.element.index()].places;
    double told = -told_apart_mm;
    for (std::size_t i = 0; i < places.size(); ++i) {
      const statics::SparPlace& place = places[i];
      if (place.at_mm < told + told_apart_mm && i + 1 < places.size())
        continue;
      told = place.at_mm;
      table.rows.push_back({format_fixed(place.at_mm, 0),
                            format_signed(statics::dot(place.bend_mm, spar.forward), 1),
                            format_signed(statics::dot(place.bend_mm, spar.starboard), 1)});
    }
    document.blocks.emplace_back(std::move(table));
  }
}

void add_report(const CheckedRig& checked, const TuneReport& report, Document& document) {
  add_heading(say(TuneSheetPhrase::as_she_stands), document);
  // The drawing first: it takes half of a page, and a table goes on over the page's end.
  StandingDrawing standing = standing_drawing(checked, report.tuned);
  document.blocks.emplace_back(
      DocumentFigure{std::move(standing.drawing),
                     say(TuneSheetPhrase::dashed_as_drawn_solid_as, format_fixed(standing.exaggeration, 0),
                         numbered_stays(checked, report.tuned.model))});
  document.blocks.emplace_back(document_table(without_empty_columns(standing_table(checked, report)),
                                              {2.0, 2.0, 1.2, 0.8, 1.0, 1.6}));
  add_bends(checked, report.tuned, document);
  if (report.doubt.inputs > 0)
    document.blocks.emplace_back(
        document_table(tune_doubt_table(checked, report), {1.8, 2.0, 1.0, 1.0, 1.0, 1.2, 1.0, 1.0}));
  add_heading(say(TuneSheetPhrase::what_one_turn_does), document);
  add_in_parts(turn_table(checked, report), report.tuned.model.stays.size(), document);
  const Table doubt = turn_doubt_table(checked, report);
  if (doubt.rows.empty()) {
    document.blocks.emplace_back(DocumentText{say(TuneSheetPhrase::no_bound_is_stated_stiffness)});
  } else {
    add_in_parts(doubt, report.tuned.model.stays.size(), document);
  }
  if (!report.planning.wishes.empty() || !report.planning.not_understood.empty()) {
    add_heading(say(TuneSheetPhrase::turns_for_what_is_wished), document);
    document.blocks.emplace_back(document_table(wish_table(checked, report), {2.6}));
    document.blocks.emplace_back(
        document_table(turn_plan_table(checked, report), {0.4, 2.0, 1.6, 1.2, 1.6, 1.0, 1.0}));
  }
  add_heading(say(TuneSheetPhrase::other_days), document);
  document.blocks.emplace_back(document_table(later_table(checked, report), {1.6, 2.0}));
}

Document document_of(const CheckedRig& checked, const TuneReport& report) {
  Document document{.title = say(TuneSheetPhrase::tune_sheet_of, boat_title(checked)),
                    .name = say(TuneSheetPhrase::tune_sheet),
                    .about = say(TuneSheetPhrase::what_one_turn_does_at),
                    .foot = identity_words(checked),
                    .draft = {},
                    .blocks = {}};
  // What is a draft here is turned by, not cut to.
  if (const std::string draft = joined(tune_draft_words(checked, report.tuned.model), ". ");
      !draft.empty()) {
    document.foot = say(TuneSheetPhrase::draft, document.foot);
    document.blocks.emplace_back(DocumentNotice{say(TuneSheetPhrase::draft_turn_nothing_by_it, draft)});
  }
  for (const std::string& caution : tune_cautions())
    document.blocks.emplace_back(DocumentNotice{caution});
  if (report.tuned.stands()) {
    add_report(checked, report, document);
  } else {
    add_heading(say(TuneSheetPhrase::not_worked_out), document);
    document.blocks.emplace_back(DocumentText{say(TuneSheetPhrase::state_these_in_rig_file)});
    document.blocks.emplace_back(document_table(tune_lacking_table(checked, report.tuned), {1.0, 3.0}));
  }
  add_heading(say(TuneSheetPhrase::inputs), document);
  document.blocks.emplace_back(
      document_table(tune_inputs_table(checked, report.tuned.model), {1.5, 1.6, 1.2, 2.0}));
  return document;
}

} // namespace

BackendDescription TuneSheet::describe() const {
  return {.name = "tune-sheet",
          .summary = say(TuneSheetPhrase::how_rig_stands_at_dock),
          .outputs = {"tune-sheet.html", "tune-sheet.csv"},
          .papers = {"tune-sheet.pdf"}};
}

OutputBundle TuneSheet::generate(const BackendRequest& request) const {
  const TuneReport report = tune_report(request.checked.rig(), request.checked.derived());
  OutputBundle bundle;
  add_document("tune-sheet", document_of(request.checked, report), request, bundle);
  bundle.files.push_back(
      {"tune-sheet.csv",
       render_csv(report.tuned.stands() ? turn_list(request.checked, report)
                                        : tune_lacking_table(request.checked, report.tuned))});
  return bundle;
}

} // namespace sheerpole
