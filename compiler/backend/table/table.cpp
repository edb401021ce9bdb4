#include "backend/table/table.hpp"

#include "backend/table/rig_tables.hpp"
#include "backend/table/tune_tables.hpp"
#include "base/code_point.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace sheerpole {

namespace {

constexpr std::size_t between_columns = 2;

void append_row(std::string& out, const std::vector<std::string>& cells, const std::vector<Column>& columns,
                const std::vector<std::size_t>& widths) {
  std::string line;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const std::string padding(widths[i] - screen_columns(cells[i]), ' ');
    if (i > 0)
      line.append(between_columns, ' ');
    line += columns[i].right ? padding + cells[i] : cells[i] + padding;
  }
  line.erase(line.find_last_not_of(' ') + 1);
  out += line + '\n';
}

/// With a sign or without, digits, at most one point.
bool is_number(std::string_view text) {
  if (text.starts_with('-') || text.starts_with('+'))
    text.remove_prefix(1);
  const auto digit = [](char c) { return c >= '0' && c <= '9'; };
  return std::count(text.begin(), text.end(), '.') <= 1 && std::any_of(text.begin(), text.end(), digit) &&
         std::all_of(text.begin(), text.end(), [&](char c) { return digit(c) || c == '.'; });
}

/// What a spreadsheet would take for a formula gets an apostrophe before it, which makes it text there
/// (OWASP, "CSV Injection": = + - @ tab CR LF and the full-width forms of the first four). A number stays.
bool is_formula(std::string_view text) {
  using namespace std::string_view_literals;
  // No letter and no digit begins one.
  if (text.empty() || (text.front() >= '0' && text.front() <= '9') ||
      (text.front() >= 'A' && text.front() <= 'z'))
    return false;
  constexpr std::array formula_signs{"="sv,  "+"sv,      "-"sv,      "@"sv,      "\t"sv,    "\r"sv,
                                     "\n"sv, "\uff1d"sv, "\uff0b"sv, "\uff0d"sv, "\uff20"sv};
  const bool formula = std::any_of(formula_signs.begin(), formula_signs.end(),
                                   [&](std::string_view sign) { return text.starts_with(sign); });
  return formula && !is_number(text);
}

void append_field(std::string& out, std::string_view text) {
  const std::string_view apostrophe = is_formula(text) ? "'" : "";
  const bool plain = std::none_of(text.begin(), text.end(), [](char sign) {
    return sign == ',' || sign == '"' || sign == '\r' || sign == '\n';
  });
  if (plain) {
    out += apostrophe;
    out += text;
    return;
  }
  out += '"';
  out += apostrophe;
  for (const char sign : text) {
    if (sign == '"')
      out += '"';
    out += sign;
  }
  out += '"';
}

void append_record(std::string& out, const std::vector<std::string>& cells) {
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (i > 0)
      out += ',';
    append_field(out, cells[i]);
  }
  out += "\r\n";
}

} // namespace

std::string render_text(const Table& table) {
  std::vector<std::string> headings;
  std::vector<std::string> rules;
  std::vector<std::size_t> widths;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    headings.push_back(table.columns[i].heading);
    std::size_t width = screen_columns(headings.back());
    for (const std::vector<std::string>& row : table.rows)
      width = std::max(width, screen_columns(row[i]));
    widths.push_back(width);
    rules.emplace_back(width, '-');
  }
  std::string out;
  if (!table.title.empty())
    out += table.title + '\n';
  append_row(out, headings, table.columns, widths);
  append_row(out, rules, table.columns, widths);
  for (const std::vector<std::string>& row : table.rows)
    append_row(out, row, table.columns, widths);
  for (const std::string& note : table.notes)
    out += note + '\n';
  return out;
}

std::string render_csv(const Table& table) {
  std::vector<std::string> headings;
  for (const Column& column : table.columns)
    headings.push_back(column.heading);
  std::string out;
  append_record(out, headings);
  for (const std::vector<std::string>& row : table.rows)
    append_record(out, row);
  return out;
}

const std::vector<NamedTable>& rig_tables() {
  static const std::vector<NamedTable> tables{
      {"points", "every point with x, y, z and how it is known", points_table},
      {"lengths", "pin-to-pin, hardware and body of every stay, each way to the length", lengths_table},
      {"pieces", "every piece to cut: line, body and cut length", pieces_table},
      {"take-up", "how far every adjuster can go both ways", take_up_table},
      {"marks", "bench marks of every piece from both ends, and the dry fit", marks_table},
      {"readings", "what was read, each correction, and what could not be corrected", readings_table},
      {"uncertainty", "how well each cut is known: worst case, law of propagation, draws",
       uncertainty_table},
      {"measure-next", "the inputs that make a cut uncertain, the largest share first", shares_table},
      {"sensitivity", "how far each stay moves for 10 mm of a point, a degree of a spar, 10 mm of a part",
       sensitivity_table},
      {"temperature", "what each stay gains or loses from -10 to +40 degC", temperature_table},
      {"account", "what each adjuster has left after bedding-in, creep, cold and heat", account_table},
      {"tension", "tension as read by a gauge or from a swing, a pulse or a stretch; sag", tension_table},
      {"standing", "how the rig stands at the dock: tension of every stay, head and bend of every mast",
       show_standing},
      {"tune", "what one turn tighter on each adjuster does to every stay and mast", show_tune},
      {"turns", "the turns that bring what is wished for, in order", show_turns},
      {"days", "tension on the coldest and the warmest day, and after bedding-in and creep", show_days},
      {"tune-inputs", "what the balance of the rig rests on, and what is lacking for it", show_tune_inputs},
      {"tune-doubt", "how far each number of `standing` may be off: worst case, law of propagation, draws",
       show_tune_doubt},
      {"replaced", "the line of each stay against the one before", replaced_table},
      {"fits", "parts in hand and a setting with which a line fits", fits_table},
      {"play", "what parts that can be taken out or put in add to the adjusters", play_table},
      {"joints", "what was compared where two things meet", joints_table},
      {"strength", "what each link of a stay holds, and the weakest that is known", strength_table},
      {"loads", "loads of shrouds and mast by named screening methods", loads_table},
      {"checks", "how often each check passed, found something or could not look", checks_table},
      {"results", "what every check came to about every thing", results_table},
      {"limits", "the thresholds of the checks, what they rest on and what this rig sets", limits_table},
      {"stack", "every stack from aloft to deck with running distances", stack_table},
      {"parts", "the hardware: length or range, ends, source", parts_table},
      {"states", "how adjusters are set in the states of the rig", states_table},
      {"differences", "values that a layer, a sister ship or the command line states over others",
       differences_table},
      {"made", "what became of each piece: as made, fitted and settled, against what was wanted",
       made_table},
      {"inspections", "what was found at inspections, when and by whom", inspections_table},
      {"record", "what is stated for the record: no length, check or order rests on it", record_table},
      {"sources", "every number of the rig files with its source", sources_table},
  };
  return tables;
}

} // namespace sheerpole
