#include "backend/table/table.hpp"

namespace sheerpole {

namespace {

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
    out += field(cells[i]);
  }
  out += "\r\n";
}

} // namespace

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
