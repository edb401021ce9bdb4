#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What is wrong with a table: the line and the sign in it, both from 1, and what to do.
struct TableFailure {
  std::size_t line = 0;
  std::size_t column = 0;
  std::string words;
};

/// One field of a table, blanks at its ends taken off, and where it begins.
struct CsvCell {
  std::string text;
  std::size_t line = 0;   ///< from 1
  std::size_t column = 0; ///< in signs, from 1
};

/// The records of a table.
struct CsvTable {
  std::vector<std::vector<CsvCell>> rows; ///< an empty line is a row of one empty cell
  std::vector<TableFailure> failures;     ///< a quote that is not closed, or something behind a closing one
};

/// Reads RFC 4180; line ends may be LF alone, and the fields may be parted by semicolons when the first
/// line holds one and no comma, as spreadsheets of some countries write it.
CsvTable read_csv(std::string_view table);

} // namespace sheerpole
