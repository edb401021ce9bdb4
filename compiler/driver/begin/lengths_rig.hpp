#pragma once

#include "base/result.hpp"
#include "driver/begin/csv_table.hpp"
#include "model/rig.hpp"
#include "service/begin/starts.hpp"

#include <cstddef>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A heading of a table of lengths.
struct LengthsColumn {
  std::string_view heading;  ///< "below-knot"; a table may write it "Below knot"
  std::string_view property; ///< of a reading, that the cell is written to; empty: one of the stay
  std::string_view help;
};

/// All headings that are read, in the order in which docs/begin/README.md lists them.
std::span<const LengthsColumn> lengths_columns();

/// Makes a rig file of a table of lengths: RFC 4180, first row the headings, of which `stay` is needed.
/// Every value carries its unit and stays as it was written. A length is pin centre to pin centre, counts
/// as measured, and is a reading where the row says how it was read; `X`, or no length, beside a cord or a
/// mark is one that the cord keeps; beside a cord a length is that of the cord, laid out on the bench. The
/// hardware is assumed, so every cut is a draft. `name` is that of the table, for the notes. A cell that
/// would be left out is a failure, as is one that cannot be read.
Result<std::string, std::vector<TableFailure>> lengths_rig(std::string_view table, const std::string& name,
                                                           const std::string& boat, FirstLine line);

/// Readings for a rig that is there, as text, and from which cell each of its lines is.
struct SheetReadings {
  std::string text;
  std::map<std::size_t, CsvCell> origins; ///< by line of the text, from 1
  std::size_t readings = 0;
  std::size_t empty_rows = 0;
};

/// The same table under the same headings as readings of the stays of `rig`: `stay` is the name of one, and
/// a row without side is of a stay that has none. A row of which only stay, side and title are filled in is
/// passed over. A length has to say how it was read. Titles are not read.
Result<SheetReadings, std::vector<TableFailure>> sheet_readings(std::string_view table,
                                                                const std::string& name, const Rig& rig);

} // namespace sheerpole
