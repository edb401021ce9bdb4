#include "driver/begin/csv_table.hpp"

#include <utility>

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

/// Takes a table apart sign by sign, and keeps count of where it is.
class CsvReader {
public:
  explicit CsvReader(std::string_view table) : table_(table), separator_(separator_of(table)) {}

  CsvTable read() {
    while (!table_.empty())
      cell();
    if (!row_.empty())
      result_.rows.push_back(std::move(row_));
    return std::move(result_);
  }

private:
  char take() {
    const char c = table_.front();
    table_.remove_prefix(1);
    if (c == '\n') {
      ++line_;
      column_ = 1;
    } else if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U) {
      ++column_;
    }
    return c;
  }

  bool ends_cell() const {
    return table_.empty() || table_.front() == separator_ || table_.front() == '\n' ||
           table_.starts_with("\r\n");
  }

  /// One cell with the separator or line end behind it. A separator at the end of the table has a cell
  /// behind it.
  void cell() {
    while (!ends_cell() && (table_.front() == ' ' || table_.front() == '\t'))
      take();
    CsvCell cell{"", line_, column_};
    if (!table_.empty() && table_.front() == '"')
      quoted(cell);
    else
      while (!ends_cell())
        cell.text += take();
    cell.text = trimmed(cell.text);
    row_.push_back(std::move(cell));
    if (table_.starts_with("\r\n"))
      take();
    if (table_.empty())
      return;
    if (take() == '\n')
      result_.rows.push_back(std::exchange(row_, {}));
    else if (table_.empty())
      row_.push_back({"", line_, column_});
  }

  void quoted(CsvCell& cell) {
    take();
    for (;;) {
      if (table_.empty()) {
        result_.failures.push_back({cell.line, cell.column, "the quote that begins here is not closed"});
        return;
      }
      const char c = take();
      if (c == '"' && table_.starts_with('"'))
        take();
      else if (c == '"')
        break;
      cell.text += c;
    }
    while (!ends_cell() && (table_.front() == ' ' || table_.front() == '\t'))
      take();
    if (!ends_cell())
      result_.failures.push_back(
          {line_, column_, "something stands behind a closing quote; a quote inside is written twice"});
    while (!ends_cell())
      take();
  }

  std::string_view table_;
  char separator_;
  std::size_t line_ = 1;
  std::size_t column_ = 1;
  std::vector<CsvCell> row_;
  CsvTable result_;
};

} // namespace

CsvTable read_csv(std::string_view table) {
  if (table.starts_with("\xEF\xBB\xBF"))
    table.remove_prefix(3);
  return CsvReader(table).read();
}

} // namespace sheerpole
