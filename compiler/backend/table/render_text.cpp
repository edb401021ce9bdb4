#include "backend/table/table.hpp"

#include "base/code_point.hpp"

#include <algorithm>

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

} // namespace sheerpole
