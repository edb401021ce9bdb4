#pragma once

#include "base/result.hpp"
#include "driver/begin/csv_table.hpp"
#include "driver/begin/starts.hpp"

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

} // namespace sheerpole
