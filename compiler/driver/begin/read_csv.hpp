#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// One record of a table: where it begins and its fields, blanks at their ends taken off.
struct CsvRow {
  std::size_t line = 0; ///< from 1
  std::vector<std::string> cells;
};

/// Reads RFC 4180; line ends may be LF alone, and the fields may be parted by semicolons when the first
/// line holds one and no comma, as spreadsheets of some countries write it. Never fails: a quote that is
/// not closed ends with the table.
std::vector<CsvRow> read_csv(std::string_view table);

} // namespace sheerpole
