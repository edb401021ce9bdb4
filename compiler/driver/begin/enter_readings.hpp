#pragma once

#include "base/result.hpp"
#include "driver/begin/csv_table.hpp"
#include "source/file_reader.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A rig file with the readings of a table behind what it held.
struct EnteredReadings {
  std::string text;
  std::size_t readings = 0;
  std::size_t empty_rows = 0; ///< of which nothing but the stay is filled in
};

/// Puts what a filled-in measuring sheet says, RFC 4180 under the headings of lengths_columns(), behind the
/// text of the rig file at `path`, as readings of its stays. Cords that the rig does not declare are
/// declared. Nothing of the file is changed otherwise. A cell that cannot be read, that names no stay or
/// side of the rig, or from which the compiler would make an error is told with its place, as is a reading
/// that the file holds already; then there is no text. `name` is that of the table, for the source.
Result<EnteredReadings, std::vector<TableFailure>> enter_readings(const std::string& path,
                                                                  FileReader& reader,
                                                                  std::string_view table,
                                                                  const std::string& name);

} // namespace sheerpole
