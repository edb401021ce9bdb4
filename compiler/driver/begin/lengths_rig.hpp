#pragma once

#include "base/result.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What is wrong with a table of lengths: the line it stands in, from 1, and what to do.
struct LengthsFailure {
  std::size_t line = 0;
  std::string words;
};

/// Makes a rig file of a table of lengths: RFC 4180, first row the headings `stay`, `length` and, as
/// wanted, `side`, `title`. Each length carries its unit and stays as it was written; it is pin centre to
/// pin centre and counts as measured. The hardware is assumed, so every cut is a draft. `name` is that of
/// the table, for the notes.
Result<std::string, std::vector<LengthsFailure>>
lengths_rig(std::string_view table, const std::string& name, const std::string& boat);

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
