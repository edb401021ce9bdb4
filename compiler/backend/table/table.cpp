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
  std::vector<std::vector<std::string>> rows = table.rows;
  for (const HeldCell& cell : table.held)
    rows[cell.row][cell.column] = cell.shown;
  std::vector<std::string> headings;
  std::vector<std::string> rules;
  std::vector<std::size_t> widths;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    headings.push_back(table.columns[i].heading);
    std::size_t width = screen_columns(headings.back());
    for (const std::vector<std::string>& row : rows)
      width = std::max(width, screen_columns(row[i]));
    widths.push_back(width);
    rules.emplace_back(width, '-');
  }
  std::string out;
  if (!table.title.empty())
    out += table.title + '\n';
  append_row(out, headings, table.columns, widths);
  append_row(out, rules, table.columns, widths);
  for (const std::vector<std::string>& row : rows)
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
      {"points", TablesPhrase::shows_points, points_table},
      {"lengths", TablesPhrase::shows_lengths, lengths_table},
      {"pieces", TablesPhrase::shows_pieces, pieces_table},
      {"take-up", TablesPhrase::shows_take_up, take_up_table},
      {"marks", TablesPhrase::shows_marks, marks_table},
      {"readings", TablesPhrase::shows_readings, readings_table},
      {"uncertainty", TablesPhrase::shows_uncertainty, uncertainty_table},
      {"measure-next", TablesPhrase::shows_measure_next, shares_table},
      {"sensitivity", TablesPhrase::shows_sensitivity, sensitivity_table},
      {"temperature", TablesPhrase::shows_temperature, temperature_table},
      {"account", TablesPhrase::shows_account, account_table},
      {"tension", TablesPhrase::shows_tension, tension_table},
      {"standing", TablesPhrase::shows_standing, show_standing},
      {"tune", TablesPhrase::shows_tune, show_tune},
      {"turns", TablesPhrase::shows_turns, show_turns},
      {"days", TablesPhrase::shows_days, show_days},
      {"tune-inputs", TablesPhrase::shows_tune_inputs, show_tune_inputs},
      {"tune-doubt", TablesPhrase::shows_tune_doubt, show_tune_doubt},
      {"replaced", TablesPhrase::shows_replaced, replaced_table},
      {"fits", TablesPhrase::shows_fits, fits_table},
      {"play", TablesPhrase::shows_play, play_table},
      {"joints", TablesPhrase::shows_joints, joints_table},
      {"strength", TablesPhrase::shows_strength, strength_table},
      {"loads", TablesPhrase::shows_loads, loads_table},
      {"checks", TablesPhrase::shows_checks, checks_table},
      {"results", TablesPhrase::shows_results, results_table},
      {"limits", TablesPhrase::shows_limits, limits_table},
      {"stack", TablesPhrase::shows_stack, stack_table},
      {"parts", TablesPhrase::shows_parts, parts_table},
      {"states", TablesPhrase::shows_states, states_table},
      {"differences", TablesPhrase::shows_differences, differences_table},
      {"made", TablesPhrase::shows_made, made_table},
      {"inspections", TablesPhrase::shows_inspections, inspections_table},
      {"record", TablesPhrase::shows_record, record_table},
      {"sources", TablesPhrase::shows_sources, sources_table},
  };
  return tables;
}

} // namespace sheerpole
