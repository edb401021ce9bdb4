#pragma once

#include "base/result.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What is wrong with a table of lengths: the line and the sign in it, both from 1, and what to do.
struct LengthsFailure {
  std::size_t line = 0;
  std::size_t column = 0;
  std::string words;
};

/// Makes a rig file of a table of lengths: RFC 4180, first row the headings `stay`, `length` and, as
/// wanted, `side`, `title`. Each length carries its unit and stays as it was written; it is pin centre to
/// pin centre and counts as measured. The hardware is assumed, so every cut is a draft. `name` is that of
/// the table, for the notes. A cell that would be left out is a failure, as is one that cannot be read.
Result<std::string, std::vector<LengthsFailure>>
lengths_rig(std::string_view table, const std::string& name, const std::string& boat);

/// One field of a table, blanks at its ends taken off, and where it begins.
struct CsvCell {
  std::string text;
  std::size_t line = 0;   ///< from 1
  std::size_t column = 0; ///< in signs, from 1
};

/// The records of a table.
struct CsvTable {
  std::vector<std::vector<CsvCell>> rows; ///< an empty line is a row of one empty cell
  std::vector<LengthsFailure> failures;   ///< a quote that is not closed, or something behind a closing one
};

/// Reads RFC 4180; line ends may be LF alone, and the fields may be parted by semicolons when the first
/// line holds one and no comma, as spreadsheets of some countries write it.
CsvTable read_csv(std::string_view table);

} // namespace sheerpole
