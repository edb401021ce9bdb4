#include "plugins/take-up/take_up_sheet.hpp"

#include "backend/page/paper_files.hpp"
#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "backend/table/rig_tables.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "units/format_length.hpp"
#include "wording/papers/take_up_sheet_words.hpp"
#include "wording/say.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t name_width = 27;
constexpr std::size_t amount_width = 12;
constexpr std::size_t turns_width = 7;

/// Columns of turns only where there is a screw to turn.
struct Columns {
  bool turns = false;

  void row(const std::string& name, const std::string& tighten, const std::string& tighten_turns,
           const std::string& slacken, const std::string& slacken_turns, const std::string& how,
           TextPage& page) const {
    std::string lead = "  " + padded(name, name_width) + padded_left(tighten, amount_width);
    if (turns)
      lead += padded_left(tighten_turns, turns_width);
    lead += padded_left(slacken, amount_width);
    if (turns)
      lead += padded_left(slacken_turns, turns_width);
    page.wrapped(lead + "   ", how);
  }
};

void print_entries(const Rig& rig, const Account& account, const Columns& columns, TextPage& page) {
  std::string above;
  for (const AccountEntry& entry : account.entries) {
    const std::string name = say(rig, entry.name);
    const bool unknown = !entry.not_checked.empty();
    std::string words =
        unknown ? say(TakeUpSheetPhrase::not_checked, say(rig, entry.not_checked)) : say(rig, entry.how);
    if (!words.empty() && words == above)
      words = unknown ? say(TakeUpSheetPhrase::not_checked_as_above) : say(TakeUpSheetPhrase::as_above);
    else
      above = words;
    if (unknown)
      page.wrapped("  " + padded(name, name_width) + "  ", words);
    else if (entry.tightens == Length{} && entry.slackens == Length{})
      columns.row(name, "0.0", "", "0.0", "", words, page);
    else
      columns.row(name, format_drawn(entry.tightens), "", format_drawn(entry.slackens), "", words, page);
  }
}

std::string left_words(const PrintedLeft& left, bool complete) {
  std::string words;
  if (left.to_tighten < Tenths{})
    words = say(TakeUpSheetPhrase::spent_cannot_tighten_so_far);
  if (left.to_slacken < Tenths{})
    add_words(words, "; ", say(TakeUpSheetPhrase::spent_cannot_slacken_so_far));
  if (!complete)
    add_words(words, "; ", say(TakeUpSheetPhrase::incomplete));
  return words;
}

std::string millimetres(Length length) {
  return format_tenths(length) + " mm";
}

/// "add 2 x toggle-24", "take out 1 x toggle-12", "add nothing".
std::string parts_words(const Rig& rig, const FitWay& way) {
  const std::string in = counts_words(rig, way.parts, say(TakeUpSheetPhrase::and_word));
  const std::string out = counts_words(rig, way.out, say(TakeUpSheetPhrase::and_word));
  std::string words = in.empty() ? in : say(TakeUpSheetPhrase::add, in);
  add_words(words, ", ", out.empty() ? out : say(TakeUpSheetPhrase::take_out, out));
  return words.empty() ? say(TakeUpSheetPhrase::add_nothing) : words;
}

void print_fit(const Rig& rig, const Fit& fit, TextPage& page) {
  const std::string lead = say(TakeUpSheetPhrase::line_of, millimetres(fit.line));
  if (!fit.not_checked.empty()) {
    page.wrapped(lead, say(TakeUpSheetPhrase::not_checked, say(rig, fit.not_checked)));
    return;
  }
  const std::string& adjuster = rig[fit.adjuster].name;
  page.wrapped(lead, say(TakeUpSheetPhrase::fill_with_parts_shall_be, millimetres(fit.gap), adjuster,
                         millimetres(fit.shortest), millimetres(fit.longest)));
  for (std::size_t i = 0; i < fit.ways.size(); ++i)
    page.wrapped("  " + padded_left(std::to_string(i + 1) + ". ", 6),
                 say(TakeUpSheetPhrase::set_open, parts_words(rig, fit.ways[i]), adjuster,
                     millimetres(fit.ways[i].adjuster), format_fixed(fit.ways[i].open * 100.0, 0)) +
                     led_by("; ", joined(changed_joint_words(rig, fit.ways[i].stack), "; ")));
  if (!fit.ways.empty())
    return;
  const bool too_short = fit.short_by > Length{};
  page.wrapped("      ", too_short
                             ? say(TakeUpSheetPhrase::none_fits_too_short, millimetres(fit.short_by))
                             : say(TakeUpSheetPhrase::none_fits_too_long, millimetres(-fit.short_by)));
}

/// The rows of a table that are about one stay, without its name.
Table of_stay(Table table, const std::string& stay) {
  std::erase_if(table.rows, [&](const auto& cells) { return cells.front() != stay; });
  for (auto& cells : table.rows)
    cells.erase(cells.begin());
  table.columns.erase(table.columns.begin());
  table.title.clear();
  table.notes.clear();
  // A column in which nobody says anything is left out.
  for (std::size_t i = table.columns.size(); i-- > 0;) {
    const bool empty = std::all_of(table.rows.begin(), table.rows.end(),
                                   [&](const auto& cells) { return cells[i].empty(); });
    if (!empty)
      continue;
    table.columns.erase(table.columns.begin() + static_cast<std::ptrdiff_t>(i));
    for (auto& cells : table.rows)
      cells.erase(cells.begin() + static_cast<std::ptrdiff_t>(i));
  }
  return table;
}

void print_table(std::string_view heading, const Table& table, TextPage& page) {
  if (table.rows.empty())
    return;
  page.blank();
  page.line(heading);
  const std::string text = render_text(table);
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t end = text.find('\n', from);
    const std::string_view line = std::string_view(text).substr(from, end - from);
    if (!line.empty())
      page.line("  " + std::string(line));
    from = end + 1;
  }
}

/// What the parts that can be taken out or put in add, row by row.
void print_play(const Rig& rig, const DerivedStay& stay, TextPage& page) {
  const Play& play = stay.play;
  if (play.rows.empty())
    return;
  page.blank();
  page.line(say(TakeUpSheetPhrase::with_parts_out_or_from));
  constexpr std::size_t stack_width = 34;
  page.line("  " + padded("", stack_width) + padded_left(say(TakeUpSheetPhrase::tighten), amount_width) +
            padded_left(say(TakeUpSheetPhrase::slacken), amount_width));
  for (const PlayRow& row : play.rows)
    page.wrapped("  " + padded(changed_stack_words(rig, row.stack), stack_width) +
                     padded_left(format_tenths(row.to_tighten), amount_width) +
                     padded_left(format_tenths(row.to_slacken), amount_width) + "   ",
                 joined(changed_joint_words(rig, row.stack), "; "));
  page.wrapped("  ", say(TakeUpSheetPhrase::from_shortest_longest_by_adjuster,
                         millimetres(play.by_adjusters), format_inches(play.by_adjusters, 16),
                         millimetres(play.in_all), format_inches(play.in_all, 16)));
}

void print_temperature(const Rig& rig, const Table& all, const DerivedStay& stay, const std::string& name,
                       TextPage& page) {
  if (!stay.thermal.not_checked.empty()) {
    page.blank();
    for (const std::string& why : say_each(rig, stay.thermal.not_checked))
      page.wrapped(say(TakeUpSheetPhrase::temperature_not_checked), why);
    return;
  }
  print_table(say(TakeUpSheetPhrase::temperature_slack_above_nothing_tighter,
                  fact_text(rig.boat.particulars, fact_names.reference_temperature)),
              of_stay(all, name), page);
  page.wrapped("  ", say(TakeUpSheetPhrase::take_up_slack_against_what));
}

} // namespace

void print_account(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  const Account& account = stay.account;
  for (const TakeUp& adjuster : stay.adjusters)
    page.line(say(TakeUpSheetPhrase::set_mm, checked.rig()[adjuster.part].name,
                  format_tenths(adjuster.set.value)));
  page.blank();
  Columns columns;
  columns.turns = !account_turns(stay, account.to_tighten).empty();
  columns.row("", say(TakeUpSheetPhrase::tighten), say(TakeUpSheetPhrase::turns),
              say(TakeUpSheetPhrase::slacken), say(TakeUpSheetPhrase::turns), say(TakeUpSheetPhrase::how),
              page);
  columns.row(say(TakeUpSheetPhrase::as_set), format_tenths(account.to_tighten),
              account_turns(stay, account.to_tighten), format_tenths(account.to_slacken),
              account_turns(stay, account.to_slacken), "", page);
  print_entries(checked.rig(), account, columns, page);
  if (account.at_first_fit) {
    const PrintedLeft left = printed_at_first_fit(account);
    columns.row(say(TakeUpSheetPhrase::left_first_fit), format_tenths(left.to_tighten),
                account_turns(stay, left.to_tighten.length()), format_tenths(left.to_slacken),
                account_turns(stay, left.to_slacken.length()),
                left_words(left, account.at_first_fit->complete), page);
  }
  for (std::size_t i = 0; i < account.left.size(); ++i) {
    const PrintedLeft left = printed_left(account, i);
    columns.row(say(TakeUpSheetPhrase::left_after, say(checked.rig(), account.left[i].after)),
                format_tenths(left.to_tighten), account_turns(stay, left.to_tighten.length()),
                format_tenths(left.to_slacken), account_turns(stay, left.to_slacken.length()),
                left_words(left, account.left[i].complete), page);
  }
}

void print_fits(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  if (stay.fits.empty())
    return;
  page.blank();
  page.line(say(TakeUpSheetPhrase::lines_hand_fewest_parts_first));
  for (const Fit& fit : stay.fits)
    print_fit(checked.rig(), fit, page);
}

BackendDescription TakeUpSheet::describe() const {
  return {.name = "take-up",
          .summary = say(TakeUpSheetPhrase::what_each_adjuster_has_what),
          .outputs = {"take-up.txt", "take-up.csv"},
          .papers = {"take-up.pdf"}};
}

OutputBundle TakeUpSheet::generate(const BackendRequest& request) const {
  const CheckedRig& checked = request.checked;
  TextPage page;
  begin_text(say(TakeUpSheetPhrase::take_up), checked, page);
  page.wrapped("", say(TakeUpSheetPhrase::millimetres_creep_amount_date_counts));
  page.wrapped("", say(TakeUpSheetPhrase::slacken_tighten_loaded_stay_by));
  const Table temperatures = temperature_table(checked);
  for (const DerivedStay& stay : checked.derived().stays) {
    const Stay& stated = checked.rig()[stay.stay];
    page.blank();
    page.rule('=');
    page.line(stated.name + led_by("   ", stated.title));
    for (const Piece& piece : stay.pieces)
      if (checked.state(piece) == PieceState::on_record)
        page.wrapped("  ", led_by("", piece.of > 1 ? piece.name + ": " : "") +
                               state_line(checked, piece, millimetres));
    if (stay.account.entries.empty())
      page.line(say(TakeUpSheetPhrase::there_nothing_set_stay));
    else
      print_account(checked, stay, page);
    print_play(checked.rig(), stay, page);
    print_temperature(checked.rig(), temperatures, stay, stated.name, page);
    print_fits(checked, stay, page);
  }
  OutputBundle bundle;
  bundle.files = {
      {"take-up.txt", with_foot(page.text(), say(TakeUpSheetPhrase::take_up_of, identity_words(checked)))},
      {"take-up.csv", render_csv(account_table(checked))}};
  if (request.printed)
    bundle.papers.push_back(text_paper_of_lengths({.file = "take-up.pdf",
                                                   .name = say(TakeUpSheetPhrase::take_up_begins),
                                                   .boat = boat_title(checked),
                                                   .about = identity_words(checked)},
                                                  page.text(), request));
  return bundle;
}

} // namespace sheerpole
