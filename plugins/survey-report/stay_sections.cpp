#include "backend/accuracy_words.hpp"
#include "backend/backend.hpp"
#include "backend/diagram/stay_strips.hpp"
#include "backend/paper_identity.hpp"
#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "calculate/geometry/junctions.hpp"
#include "model/fact_name.hpp"
#include "plugins/survey-report/survey_report.hpp"
#include "units/format_length.hpp"
#include "units/si_factors.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/survey_report_words.hpp"
#include "wording/say.hpp"
#include "wording/strength_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace sheerpole {

namespace {

constexpr double strip_width = 180.0;

/// Rows of a table of the rig by the stay that their first column names, without that column.
using RowsByStay = std::map<std::string, std::vector<std::vector<std::string>>>;

RowsByStay rows_by_stay(const Table& table) {
  RowsByStay rows;
  for (const std::vector<std::string>& row : table.rows)
    rows[row.front()].emplace_back(row.begin() + 1, row.end());
  return rows;
}

/// Tables that hold rows of every stay, worked out once.
struct StayTables {
  RowsByStay strength;
  RowsByStay take_up;
  RowsByStay made; ///< by the name of the piece
};

std::string side_words(const Stay& stay) {
  return stay.side == Side::centre ? say(SurveyReportPhrase::on_centreline)
                                   : say(SurveyReportPhrase::on_side, name_of(stay.side));
}

std::string path_words(const Rig& rig, const Stay& stay) {
  return joined(stay.path, ", ", [&](const PathStop& stop) {
    return rig[stop.point].name + (stop.passage == Passage::end    ? ""
                                   : stop.passage == Passage::free ? say(SurveyReportPhrase::passes_free)
                                                                   : say(SurveyReportPhrase::clamped));
  });
}

/// A number with how it is known.
template <class Value>
std::string known(const std::string& text, const Sourced<Value>& value) {
  return text + " (" + source_words(value.provenance) + ")";
}

std::string line_words(const LineMaterial& line) {
  return joined({line.name, line.title, line.construction.text, line.grade, line.size.name}, ", ");
}

void add_line_facts(const LineMaterial& line, DocumentFacts& facts) {
  facts.rows.emplace_back(say(SurveyReportPhrase::line), line_words(line));
  facts.rows.emplace_back(say(SurveyReportPhrase::diameter),
                          known(format_tenths(line.diameter.value) + " mm", line.diameter));
  facts.rows.emplace_back(
      say(SurveyReportPhrase::break_load),
      line.break_load
          ? known(format_fixed(line.break_load->value.kilonewtons(), 1) + " kN", *line.break_load)
          : say(SurveyReportPhrase::not_stated));
  for (const char* name : {"batch", "bought", "made", "evidence"})
    if (const std::string text = fact_text(line.particulars, name); !text.empty())
      facts.rows.emplace_back(say(SurveyReportPhrase::of_line, name), text);
}

std::string length_words(const DerivedStay& derived, const std::string& x) {
  const bool unknown = derived.route == LengthRoute::unknown;
  const Tenths total = printed_total(derived.pin_to_pin);
  const std::string amount = format_total(unknown, total, x) + (unknown && total == Tenths{} ? "" : " mm");
  std::string words = unknown ? fmt::format("{}: {}", amount, route_words(derived.route))
                              : say(SurveyReportPhrase::length_by, amount, route_words(derived.route));
  for (const RouteComparison& other : derived.other_routes) {
    words += say(SurveyReportPhrase::mm_by, format_tenths(other.length), route_words(other.other));
    if (other.expected_x)
      words += say(SurveyReportPhrase::so_expected_mm, x, format_tenths(*other.expected_x));
  }
  return words;
}

std::string doubt_words(const Rig& rig, const DerivedStay& derived) {
  if (!derived.uncertainty)
    return say(SurveyReportPhrase::not_checked_no_bound_stated);
  const Uncertainty& found = *derived.uncertainty;
  const std::string range = range_words(found.worst_low, found.worst_high);
  const std::string open = without_tolerance(found, [&](const Remark& what) { return say(rig, what); });
  return open.empty() ? say(SurveyReportPhrase::worst_mm, range)
                      : say(SurveyReportPhrase::no_tolerance_for_worst_mm, open, range);
}

/// The earliest day that its section names.
std::string first_day(const Rig& rig, const Stay& stay) {
  std::string first;
  for (const std::string& day :
       {fact_text(stay.particulars, fact_names.made), fact_text(stay.particulars, fact_names.installed),
        fact_text(rig[stay.material].particulars, fact_names.made)})
    if (!day.empty() && (first.empty() || day < first)) // ISO 8601 days are in order as texts
      first = day;
  return first;
}

/// Whether it hangs there or is still to be made: the state of each of its pieces.
std::string states_words(const CheckedRig& checked, const DerivedStay& derived) {
  return joined(derived.pieces, "; ", [&](const Piece& piece) {
    const std::string state = state_line(checked, piece);
    return derived.pieces.size() == 1 ? state : piece.name + ": " + state;
  });
}

void add_facts(const CheckedRig& checked, const Stay& stay, const DerivedStay& derived,
               Document& document) {
  const Rig& rig = checked.rig();
  DocumentFacts facts;
  facts.rows.emplace_back(say(SurveyReportPhrase::side_column), side_words(stay));
  add_line_facts(rig[stay.material], facts);
  facts.rows.emplace_back(say(SurveyReportPhrase::path_from_aloft),
                          stay.path.empty() ? say(SurveyReportPhrase::not_stated) : path_words(rig, stay));
  if (stay.path.size() >= 2)
    facts.rows.emplace_back(say(SurveyReportPhrase::ends), where_words(rig, stay, WhichEnd::upper) + "; " +
                                                               where_words(rig, stay, WhichEnd::lower));
  if (const std::vector<std::string> parting = parting_words(rig, derived.stay); !parting.empty())
    facts.rows.emplace_back(say(SurveyReportPhrase::if_parts), joined(parting, " "));
  for (const JunctionBalance& junction : junction_balances(rig))
    for (const JunctionLeg& leg : junction.loaded)
      if (leg.share && leg.stay == derived.stay)
        facts.rows.emplace_back(say(SurveyReportPhrase::junction),
                                say(SurveyReportPhrase::deg_from_line_carries_tension,
                                    format_fixed(leg.angle_radians / degree, 1), rig[junction.single].name,
                                    format_fixed(*leg.share, 2)));
  if (!derived.pieces.empty())
    facts.rows.emplace_back(say(SurveyReportPhrase::state), states_words(checked, derived));
  facts.rows.emplace_back(say(SurveyReportPhrase::pin_pin), length_words(derived, x_on_sheet(rig, stay)));
  facts.rows.emplace_back(say(SurveyReportPhrase::how_well_cut_known), doubt_words(rig, derived));
  if (const std::string later = layer_after(rig, stay, first_day(rig, stay)); !later.empty())
    facts.rows.emplace_back(say(SurveyReportPhrase::lengths), later);
  const std::string installed = fact_text(stay.particulars, fact_names.installed);
  const std::string evidence = fact_text(stay.particulars, fact_names.evidence);
  facts.rows.emplace_back(say(SurveyReportPhrase::installed),
                          installed.empty() ? say(SurveyReportPhrase::not_stated) : installed);
  facts.rows.emplace_back(say(SurveyReportPhrase::evidence_age),
                          evidence.empty() ? say(SurveyReportPhrase::not_stated) : evidence);
  for (const Particular& fact : stay.particulars)
    if (fact.name != "installed" && fact.name != "evidence")
      facts.rows.emplace_back(fact.name, shown_fact(fact));
  document.blocks.emplace_back(std::move(facts));
}

void add_parts(const CheckedRig& checked, const Stay& stay, const DerivedStay& derived,
               Document& document) {
  const Rig& rig = checked.rig();
  DocumentTable table{.caption = say(SurveyReportPhrase::from_upper_end_lower_end),
                      .columns = {{say(SurveyReportPhrase::item), 1.5},
                                  {say(SurveyReportPhrase::what), 1.3},
                                  {say(SurveyReportPhrase::length_mm), 1.2, true},
                                  {say(SurveyReportPhrase::from_upper_pin_mm), 1.2, true},
                                  {say(SurveyReportPhrase::ends_column), 2.6},
                                  {say(SurveyReportPhrase::length_known_by), 1.6},
                                  {say(SurveyReportPhrase::age_batch), 1.3}}};
  if (derived.pin_to_pin.unknown && rig.stays.size() > 1) // two columns of its whole name would be too wide
    add_words(table.caption, ", ", say(SurveyReportPhrase::where_x, x_on_sheet(rig, stay)));
  const std::vector<std::vector<std::string>> rows = stack_rows(checked, derived, "X");
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const std::vector<std::string>& row = rows[i]; // no., kind, item, times, length, from pin
    const StackItem& item = stay.stack[i];
    std::string ends;
    std::string length_known;
    std::string age;
    if (item.kind == StackItem::Kind::part) {
      const Part& part = rig[item.part];
      for (const End* end : {&part.upper, &part.lower})
        if (end->stated())
          add_words(ends, " / ", end_words(*end));
      length_known = length_source(part);
      for (const char* name : {"installed", "evidence", "batch"})
        add_words(age, ", ", fact_text(part.particulars, name));
    }
    table.rows.push_back({row[3] == "1" ? row[2] : say(SurveyReportPhrase::times, row[2], row[3]), row[1],
                          row[4], row[5], ends, length_known, age});
  }
  if (table.rows.empty())
    table.caption = say(SurveyReportPhrase::rig_files_do_not_say);
  document.blocks.emplace_back(std::move(table));
}

void add_rows(const std::string& caption, std::vector<DocumentColumn> columns, const RowsByStay& rows,
              const Stay& stay, Document& document) {
  const auto found = rows.find(stay.name);
  if (found == rows.end())
    return;
  document.blocks.emplace_back(
      DocumentTable{.caption = caption, .columns = std::move(columns), .rows = found->second});
}

/// The words of all checks of a joint with this result, each once.
std::string words_of(const Rig& rig, const Joint& joint, JointResult result) {
  std::vector<std::string> said;
  for (const JointCheck& check : joint.checks)
    if (check.result == result)
      if (std::string words = say(rig, check.words);
          std::find(said.begin(), said.end(), words) == said.end())
        said.push_back(std::move(words));
  return joined(said, "; ");
}

void add_joints(const Rig& rig, const DerivedStay& derived, Document& document) {
  DocumentTable table{.caption = say(SurveyReportPhrase::joints),
                      .columns = {{say(SurveyReportPhrase::joint), 1.5},
                                  {say(SurveyReportPhrase::found), 2.0},
                                  {say(SurveyReportPhrase::compared_passed), 2.4},
                                  {say(SurveyReportPhrase::not_checked), 2.4}}};
  for (const Joint& joint : derived.joints)
    table.rows.push_back({say(rig, joint.name), words_of(rig, joint, JointResult::finding),
                          words_of(rig, joint, JointResult::pass),
                          words_of(rig, joint, JointResult::not_checked)});
  if (!table.rows.empty())
    document.blocks.emplace_back(std::move(table));
}

/// The links whose strength is known; the others in a line below.
void add_strength(const Rig& rig, const RowsByStay& rows, const Stay& stay, const DerivedStay& derived,
                  Document& document) {
  DocumentTable table{.caption = say(SurveyReportPhrase::what_each_link_holds_from),
                      .columns = {{say(SurveyReportPhrase::link), 2.0},
                                  {"kN", 0.7, true},
                                  {say(SurveyReportPhrase::how), 2.4},
                                  {say(SurveyReportPhrase::source), 2.0},
                                  {say(SurveyReportPhrase::remark), 1.6}}};
  if (const auto found = rows.find(stay.name); found != rows.end())
    for (const std::vector<std::string>& row : found->second)
      if (!row[1].empty())
        table.rows.push_back(row);
  if (table.rows.empty())
    table.caption = say(SurveyReportPhrase::what_each_link_holds_not);
  if (const std::string unknown = unknown_words(rig, derived.chain); !unknown.empty())
    table.notes.push_back(say(SurveyReportPhrase::not_stated_never_taken_for, unknown));
  document.blocks.emplace_back(std::move(table));
}

void add_sum(const CheckedRig& checked, const DerivedStay& derived, Document& document) {
  const Rig& rig = checked.rig();
  for (const Piece& piece : derived.pieces) {
    const PieceSum sum = piece_sum(rig, derived, piece);
    const std::string x = x_on_sheet(rig, rig[derived.stay]);
    DocumentTable table{.caption = say(SurveyReportPhrase::how_length_came_about, piece.name),
                        .columns = {{say(SurveyReportPhrase::term), 2.4},
                                    {"mm", sum.unknown ? 2.2 : 0.9, true}, // with the name of the stay
                                    {say(SurveyReportPhrase::how_known), 3.6}}};
    if (sum.unknown)
      table.rows.push_back({x, x, source_words(sum.unknown_source)});
    for (const SumSection& section : sum.sections) {
      for (const SumRow& row : section.rows) {
        std::string known = say(rig, row.term->how);
        add_words(known, "; ", source_words(row.term->provenance));
        table.rows.push_back({term_name(rig, *row.term), format_signed(row.amount), std::move(known)});
      }
      const bool waits = section.kind == SumSection::Kind::cut && !checked.held_by(piece).empty();
      table.rows.push_back({"= " + std::string(name_of(section.kind)),
                            waits ? not_yet() : format_total(sum.unknown, section.total, x),
                            section.complete ? say(SurveyReportPhrase::sum_rows_above)
                                             : say(SurveyReportPhrase::incomplete_something_not_stated)});
    }
    for (const MissingInput& missing : piece.missing)
      table.notes.push_back(
          say(SurveyReportPhrase::missing, say(rig, missing.what), say(rig, missing.mend)));
    for (const std::string& left_out : say_each(rig, piece.not_counted))
      table.notes.push_back(say(SurveyReportPhrase::not_counted, left_out));
    document.blocks.emplace_back(std::move(table));
  }
}

/// What became of its pieces, a table each; nothing where nobody wrote it down.
void add_history(const RowsByStay& rows, const DerivedStay& derived, Document& document) {
  for (const Piece& piece : derived.pieces) {
    const auto found = rows.find(piece.name);
    if (found == rows.end())
      continue;
    DocumentTable table{.caption = say(SurveyReportPhrase::history_bearing_to_bearing, piece.name),
                        .columns = {{say(SurveyReportPhrase::stage), 0.9},
                                    {say(SurveyReportPhrase::date), 1.4},
                                    {say(SurveyReportPhrase::body), 1.2, true},
                                    {say(SurveyReportPhrase::planned), 1.2, true},
                                    {say(SurveyReportPhrase::longer_by), 1.1, true},
                                    {say(SurveyReportPhrase::adjuster_then), 1.2, true},
                                    {say(SurveyReportPhrase::stock_batch), 1.8},
                                    {say(SurveyReportPhrase::by_job), 1.6},
                                    {say(SurveyReportPhrase::note), 1.8}}};
    for (const std::vector<std::string>& row : found->second) // as made_table() has it, without the piece
      table.rows.push_back({row[0], row[1], row[2], row[3], row[4], row[5], joined({row[6], row[7]}, ", "),
                            joined({row[8], row[9]}, ", "), row[10]});
    document.blocks.emplace_back(std::move(table));
  }
}

void add_log(const CheckedRig& checked, const Stay& stay, Document& document) {
  const Rig& rig = checked.rig();
  DocumentTable table{.caption = say(SurveyReportPhrase::inspection_log),
                      .columns = {{say(SurveyReportPhrase::date), 0.9},
                                  {say(SurveyReportPhrase::where), 1.6},
                                  {say(SurveyReportPhrase::condition), 1.0},
                                  {say(SurveyReportPhrase::by_column), 1.0},
                                  {say(SurveyReportPhrase::note), 2.4}}};
  const bool with_pictures = std::any_of(rig.inspections.begin(), rig.inspections.end(),
                                         [](const Inspection& one) { return !one.photos.empty(); });
  if (with_pictures)
    table.columns.push_back({say(SurveyReportPhrase::photographs_column), 1.1});
  for (const Inspection& inspection : rig.inspections)
    for (const StayId id : inspection.stays)
      if (&rig[id] == &stay) {
        table.rows.push_back({inspection.date, where_looked(rig, inspection),
                              std::string(name_of(inspection.condition)), inspection.by, inspection.note});
        if (with_pictures)
          table.rows.back().push_back(photograph_numbers(checked, inspection));
      }
  if (table.rows.empty())
    table.caption = say(SurveyReportPhrase::inspection_log_no_entry);
  document.blocks.emplace_back(std::move(table));
}

/// True for what is said of this stay, or of both sides of its pair.
bool about(const std::string& subject, const Stay& stay) {
  return subject == stay.name || subject == stay.base;
}

void add_stay_findings(const CheckedRig& checked, const Stay& stay, Document& document) {
  DocumentTable table{.caption = say(SurveyReportPhrase::found_on_stay),
                      .columns = {{say(SurveyReportPhrase::class_word), 1.0},
                                  {say(SurveyReportPhrase::what_was_found), 4.0}}};
  for (const Diagnostic& finding : checked.findings())
    if (about(finding.subject, stay))
      table.rows.push_back({finding.waived.empty() ? std::string(name_of(class_of(finding)))
                                                   : say(SurveyReportPhrase::is_waived),
                            finding.message + " (" + finding.slug + ")"});
  CheckTotals totals;
  for (const CheckResult& result : checked.results())
    if (about(result.subject, stay))
      totals.add(result.outcome);
  if (table.rows.empty())
    table.caption = totals.not_checked > 0 ? say(SurveyReportPhrase::found_on_stay_nothing_by)
                                           : say(SurveyReportPhrase::found_on_stay_nothing);
  table.notes.push_back(totals.found == 1
                            ? say(SurveyReportPhrase::checks_stay_pass_one_finding, totals.passed,
                                  totals.not_checked, totals.waived)
                            : say(SurveyReportPhrase::checks_stay_pass_findings_not, totals.passed,
                                  totals.found, totals.not_checked, totals.waived));
  document.blocks.emplace_back(std::move(table));
}

} // namespace

void add_stays(const CheckedRig& checked, Document& document) {
  const Rig& rig = checked.rig();
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::stays), 2, "stays"});
  if (checked.derived().stays.empty()) {
    document.blocks.emplace_back(DocumentText{say(SurveyReportPhrase::rig_files_state_no_stays)});
    return;
  }
  document.blocks.emplace_back(DocumentText{say(SurveyReportPhrase::port_starboard_stand_apart_each)});
  const StayTables tables{rows_by_stay(strength_table(checked)), rows_by_stay(take_up_table(checked)),
                          rows_by_stay(made_table(checked))};
  const std::vector<Strip> strips = strip_contents(checked);
  for (const DerivedStay& derived : checked.derived().stays) {
    const Stay& stay = rig[derived.stay];
    document.blocks.emplace_back(
        DocumentHeading{stay.name + led_by(": ", stay.title), 3, section_of(stay)});
    add_stay_findings(checked, stay, document);
    add_facts(checked, stay, derived, document);
    if (const Strip* strip = find_strip(strips, stay))
      document.blocks.emplace_back(DocumentFigure{strip_drawing(*strip, strip_width), ""});
    add_parts(checked, stay, derived, document);
    add_rows(say(SurveyReportPhrase::adjusters),
             {{say(SurveyReportPhrase::adjuster), 1.6},
              {say(SurveyReportPhrase::set_mm), 0.9, true},
              {say(SurveyReportPhrase::tighten_mm), 0.9, true},
              {say(SurveyReportPhrase::turns), 0.7, true},
              {say(SurveyReportPhrase::slacken_mm), 0.9, true},
              {say(SurveyReportPhrase::turns), 0.7, true},
              {say(SurveyReportPhrase::mm_per_turn), 0.8, true},
              {say(SurveyReportPhrase::thread_engaged_mm), 1.0, true},
              {say(SurveyReportPhrase::one_diameter_mm), 0.9, true}},
             tables.take_up, stay, document);
    add_joints(rig, derived, document);
    add_strength(rig, tables.strength, stay, derived, document);
    add_sum(checked, derived, document);
    add_history(tables.made, derived, document);
    add_log(checked, stay, document);
  }
}

} // namespace sheerpole
