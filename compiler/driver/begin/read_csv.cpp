#include "driver/begin/read_csv.hpp"

namespace sheerpole {

namespace {

std::string trimmed(const std::string& text) {
  const std::size_t begin = text.find_first_not_of(" \t");
  if (begin == std::string::npos)
    return {};
  return text.substr(begin, text.find_last_not_of(" \t") - begin + 1);
}

char separator_of(std::string_view table) {
  const std::string_view first = table.substr(0, table.find('\n'));
  return first.find(';') != std::string_view::npos && first.find(',') == std::string_view::npos ? ';' : ',';
}

} // namespace

std::vector<CsvRow> read_csv(std::string_view table) {
  if (table.starts_with("\xEF\xBB\xBF"))
    table.remove_prefix(3);
  const char separator = separator_of(table);
  std::vector<CsvRow> rows;
  std::size_t line = 1;
  CsvRow row{line, {}};
  std::string cell;
  bool quoted = false;
  const auto end_cell = [&] {
    row.cells.push_back(trimmed(cell));
    cell.clear();
  };
  for (std::size_t i = 0; i < table.size(); ++i) {
    const char c = table[i];
    line += c == '\n' ? 1 : 0;
    if (quoted) {
      if (c == '"' && i + 1 < table.size() && table[i + 1] == '"') {
        cell += '"';
        ++i;
      } else if (c == '"') {
        quoted = false;
      } else {
        cell += c;
      }
    } else if (c == '"' && trimmed(cell).empty()) {
      cell.clear();
      quoted = true;
    } else if (c == separator) {
      end_cell();
    } else if (c == '\n') {
      end_cell();
      rows.push_back(std::move(row));
      row = {line, {}};
    } else if (c != '\r') {
      cell += c;
    }
  }
  if (!cell.empty() || !row.cells.empty()) {
    end_cell();
    rows.push_back(std::move(row));
  }
  return rows;
}

} // namespace sheerpole
