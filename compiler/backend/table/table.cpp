#include "backend/table/table.hpp"

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
std::string as_shown(const std::string& text) {
  using namespace std::string_view_literals;
  constexpr std::array formula_signs{"="sv,  "+"sv,      "-"sv,      "@"sv,      "\t"sv,    "\r"sv,
                                     "\n"sv, "\uff1d"sv, "\uff0b"sv, "\uff0d"sv, "\uff20"sv};
  const bool formula = std::any_of(formula_signs.begin(), formula_signs.end(),
                                   [&](std::string_view sign) { return text.starts_with(sign); });
  return formula && !is_number(text) ? "'" + text : text;
}

std::string field(const std::string& text) {
  if (text.find_first_of(",\"\r\n") == std::string::npos)
    return text;
  std::string quoted = "\"";
  for (const char sign : text) {
    if (sign == '"')
      quoted += '"';
    quoted += sign;
  }
  return quoted + '"';
}

void append_record(std::string& out, const std::vector<std::string>& cells) {
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (i > 0)
      out += ',';
    out += field(as_shown(cells[i]));
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

} // namespace sheerpole
