#pragma once

#include "backend/table/table.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// What a table is of, beside its rows.
struct TableOf {
  std::string_view table;          ///< the word by which it was asked for: "take-up"
  std::optional<std::string> boat; ///< her title; nothing: the table is of no boat
  bool draft = false;              ///< of a boat: some of her lengths are not to be cut to yet
};

/// The version of what render_json writes. As long as it is the same, members are added and none is taken
/// away or comes to mean something else.
inline constexpr int table_json_version = 1;

/// `{format, version, table, boat, draft, title, columns, rows, notes}` (docs/json/table.schema.json). A
/// row has a member for each column, named by its heading in small letters with its unit at the end:
/// `body_mm`. An empty cell is null; a number stands as it is printed, so that rows add up; a length that
/// may be X and so much more is `{unknown, known_mm}`; everything else is text.
std::string render_json(const Table& table, const TableOf& of);

} // namespace sheerpole
